import { lawOf, lawTaken } from '../../plan/law';
import type { Plan, Stated } from '../../plan/plan';
import { exactly, type Quantity } from '../../quantity';
import { recoveryByLaw } from '../../reference/jurisdictions';
import { recoveryLevelSource, smallAppliance, unreachableLevelSource } from '../../reference/recovery-levels';
import { inchOfMercury, standardAtmosphere } from '../../reference/table-units';
import { vehicleRecovery } from '../../reference/vehicles';
import { recoveryLevel } from '../../takeoff/figures/recovery-level';
import { input, named } from '../../takeoff/given';
import type { Entry } from '../../walk/walk';
import { defineCheck, type Whole } from '../define';
import { isVehicle } from '../equipment';
import { isCompressor } from '../plant';
import { authority, edits, gauge, inOwn, shown } from '../support';

/** Recovery that stops above the level that the rule asks for this gas and charge. */
export const recoveryTooShallow = defineCheck({
  name: 'recovery-too-shallow',
  severity: 'error',
  title: 'Recovery stops above the level that the rule asks',
  acceptable: false,
  reads: 'figure',
  ground: 'law',
  meaning:
    'The level stated for this recovery is above the one that the law of the site asks (`law` of the site; the table of the US where it states none): by the pressure class of the refrigerant, the charge and the age of the recovery machine. A small appliance and a vehicle under the law of the US are emptied by share of the charge, or to 4 inHg: a vacuum that is stated and falls short of that is no level of the rule. For a repair that takes neither compressor nor coil off, atmospheric pressure is enough.',
  why: 'What is left is let into the air when the circuit is opened: against the law, and more than a trace with a large or a medium-pressure charge.',
  source: `${recoveryLevelSource}, where the site states no other law; ${recoveryByLaw.EU.source}; ${unreachableLevelSource} (handbook 2.1); ${authority}`,
  wrong: { base: 'split', instead: [['recover system to 0 inHg', 'recover system to 20 psig # <- here']] },
  right: { base: 'split' },
  plan(whole) {
    if (isVehicle(whole.plan) || whole.plan.system.smallAppliance !== null) {
      if (lawOf(whole.plan) === 'US') vacuumStated(whole);
      return;
    }
    whole.entries.forEach((entry, at) => {
      for (const event of entry.events) {
        if (event.type !== 'recovers' || event.spaces.length === 0) continue;
        const { atmosphere } = whole.plan.site;
        const gas = event.held.find((each) => each.refrigerant)?.refrigerant;
        if (!gas) continue;
        const parts = event.spaces.flatMap((space) => space.parts);
        const wide = parts.length > entry.before.graph.parts.length / 2;
        const asked = required(whole.plan, gas, wide);
        const { source } = recoveryByLaw[lawOf(whole.plan)];
        const enough = major(whole, at, parts) ? (asked ?? atmosphere) : atmosphere;
        // One percent is less than a gauge shows.
        if (event.level <= enough * 1.01 || reachedLater(whole.entries, at, parts, enough)) continue;
        const limit = enough < atmosphere * 0.99 ? inches(whole.plan, enough) : gauge(whole.plan, atmosphere);
        const level = enough < atmosphere * 0.99 ? limit : inOwn(whole.plan, '0 inHg', '0 kPa vacuum');
        const stated =
          event.level < atmosphere * 0.99
            ? inOwn(
                whole.plan,
                `${Number(((atmosphere - event.level) / inchOfMercury).toFixed(1))} inHg`,
                gauge(whole.plan, event.level),
              )
            : gauge(whole.plan, event.level);
        // The table counts from the standard atmosphere, a gauge from that of the site.
        const table = `${Math.round((standardAtmosphere - enough) / inchOfMercury)} inHg`;
        const here = limit.endsWith(' inHg') && limit !== table ? `, ${table} of the table at this altitude` : '';
        whole.report(entry, {
          message: `${gas} is recovered to ${stated} only; before this circuit is opened the rule asks ${limit}${here} (${source}${lawTaken(whole.plan)}); ${authority}.`,
          slot: entry.slot.step.spans['level'] ? 'level' : 'what',
          concerns: parts,
          fixes: [
            {
              title: `Recover to ${limit}`,
              edits: (mend) =>
                edits(
                  entry.slot.step.spans['level']
                    ? mend.replace(entry.slot.step, 'level', `to ${level}`)
                    : mend.append(entry.slot.step, ` to ${level}`),
                ),
            },
          ],
        });
      }
    });
  },
});

/** Of a small appliance or a vehicle a share is taken out, or a vacuum drawn; one that is stated must be the rule's. */
function vacuumStated(whole: Whole): void {
  const { atmosphere } = whole.plan.site;
  const [what, source] = isVehicle(whole.plan)
    ? ['vehicle', vehicleRecovery.source]
    : ['small appliance', smallAppliance.source];
  const asked = atmosphere - smallAppliance.vacuumInHg * inchOfMercury;
  whole.entries.forEach((entry, at) => {
    for (const event of entry.events) {
      if (event.type !== 'recovers' || event.spaces.length === 0 || !entry.slot.step.spans['level']) continue;
      if (!event.held.some((each) => each.refrigerant)) continue;
      const parts = event.spaces.flatMap((space) => space.parts);
      // A level at or above the atmosphere says that the share of the charge counts; half an inch is what a gauge shows.
      if (event.level > atmosphere * 0.99 || event.level <= asked + inchOfMercury / 2) continue;
      if (reachedLater(whole.entries, at, parts, asked)) continue;
      whole.report(entry, {
        message: `${inches(whole.plan, event.level)} of vacuum empties no ${what} by the rule: it asks ${inches(whole.plan, asked)} (${source}); ${authority}.`,
        slot: 'level',
        concerns: parts,
        fixes: [
          {
            title: `Recover to ${inches(whole.plan, asked)}`,
            edits: (mend) => edits(mend.replace(entry.slot.step, 'level', `to ${inches(whole.plan, asked)}`)),
          },
        ],
      });
    }
  });
}

/**
 * The level in half inches of mercury on the gauge of the site, never less than the rule asks (a hundredth of it is less than a
 * gauge shows), or in the units of a metric plan.
 */
const inches = (plan: Plan, level: number): string =>
  inOwn(
    plan,
    `${Math.ceil(((plan.site.atmosphere - level * 1.0099) / inchOfMercury) * 2) / 2} inHg`,
    shown(plan, exactly('pressure', level), { level: 'vacuum' }),
  );

/** The level that the rule asks for a whole circuit, as a clause of `recover` writes it. */
export function levelAsked(plan: Plan, gas: string): string {
  const asked = required(plan, gas, true);
  return asked !== null && asksVacuum(plan, gas) ? inches(plan, asked) : inOwn(plan, '0 inHg', '0 kPa vacuum');
}

/** Whether the rule asks for a level below the atmosphere: then it is broken before anything is opened. */
export const asksVacuum = (plan: Plan, gas: string): boolean =>
  (required(plan, gas, true) ?? plan.site.atmosphere) < plan.site.atmosphere * 0.99;

function required(plan: Plan, gas: string, wide: boolean): number | null {
  const { level } = recoveryByLaw[lawOf(plan)];
  if (level !== 'table') return level === 'atmosphere' ? plan.site.atmosphere : level;
  const machine = plan.bring?.find((each) => each.word === 'recovery-machine')?.declaration;
  const made = machine?.bound.block.find((each) => each.word?.word === 'made')?.values['year'] as string | undefined;
  const charge: Stated | null = plan.system.recoverCharge ?? plan.system.charge;
  // A section that is shut off counts with its own, small charge.
  const mass: Quantity = wide && charge ? charge.quantity : exactly('mass', 1);
  const figure = recoveryLevel.figure(
    'recovery',
    { refrigerant: named(gas), charge: input(mass), machineMade: named(made ?? '2000') },
    { atmosphere: plan.site.atmosphere },
  );
  return figure.quantity?.low ?? null;
}

/** Whether the work behind it takes a compressor or a coil off: the rule's own border of a major repair (40 CFR 82.152). */
function major(whole: Whole, at: number, parts: readonly number[]): boolean {
  for (const entry of whole.entries.slice(at + 1)) {
    if (entry.events.some((event) => event.type === 'charges')) return false;
    for (const event of entry.events) {
      if (event.type !== 'unmounts') continue;
      const taken = event.parts.map((index) => entry.before.graph.parts[index]!);
      if (taken.some((part) => parts.includes(part.index) && (isCompressor(part) || part.kind.group === 'coil')))
        return true;
    }
  }
  return false;
}

/** A first recovery that a later one carries on to the level is no fault. */
const reachedLater = (entries: readonly Entry[], at: number, parts: readonly number[], level: number): boolean => {
  for (const entry of entries.slice(at + 1)) {
    if (entry.events.some((event) => event.type === 'opens' && parts.includes(event.part))) return false;
    if (
      entry.events.some(
        (event) =>
          event.type === 'recovers' &&
          event.level <= level * 1.01 &&
          event.spaces.some((space) => space.parts.some((part) => parts.includes(part))),
      )
    )
      return true;
  }
  return false;
};
