import type { Stated } from '../../plan/plan';
import { conversionMost } from '../../reference/charging';
import type { Entry } from '../../walk/walk';
import { isCharge } from '../course';
import { defineCheck, type Whole } from '../define';
import { chargePerCapacity, outOfProportion } from '../equipment';
import { everyPart, keepsGathered, overKept } from '../kept-charge';
import { touched } from '../plant';
import { changesRefrigerant, chargeInAll, systemSpot } from '../plant-facts';
import { amount, shown } from '../support';

/** Two statements of one charge differ by no more than this: rounding and what hoses keep (common practice, no source). */
const same = 0.15;
/** What comes out may be little after a leak, but hardly more than this over the plate (common practice, no source). */
const outMost = 1.5;
/** Another machine of that size holds between a third and three times of what the old one held (common practice, no source). */
const otherMost = 3;
/** No machine unloads below this share of its capacity (common practice, no source). */
const leastShare = 0.02;
const isLeastOff = (share: number): boolean => share > 1.005 || share < leastShare;
/** A kept machine of which one amount is said in pounds and another in kilograms differs by no more (common practice, no source). */
const otherUnitMost = 1.8;
/** A new machine's first charge, before it is trimmed, differs from the plate by no more than this (common practice, no source). */
const firstCharge = { least: 0.6, most: 1.5 };

/** A charge that contradicts another one that the plan states. */
export const chargeDoesNotFit = defineCheck({
  name: 'charge-does-not-fit',
  severity: 'warning',
  title: 'A charge does not fit what else the plan says of the machine',
  acceptable: true,
  noFix: 'Two figures of the plan contradict each other, and only the plate or the sheet says which one is wrong.',
  reads: 'figure',
  ground: 'practice',
  yieldsTo: ['recovery-beyond-section', 'joint-left-open'],
  meaning:
    'What the steps weigh into an empty machine differs from its charge with the line allowance; or more is weighed into a machine that kept its charge than its opened section and new line can take; or it is trimmed to less than is in it already; or the charge differs from what the new unit comes with; or what is to come out is far from what goes in; or the charge is out of all proportion to the capacity, or the least load to the full one.',
  why: 'One of the two figures is a slip. Half a charge freezes the coil, ten times the charge bursts the machine, and cylinders are brought for the wrong one.',
  source: 'weighed in by plate and lines (handbook 9.1); the weight recovered is the best estimate (handbook 13.3)',
  wrong: {
    base: 'split',
    instead: [
      ['holds R-454B 6 lb', 'holds R-454B 3 lb'],
      ['charge 6 lb for 15 ft', 'charge 6 lb for 15 ft # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    ofUnit(whole);
    const slipped = recovered(whole);
    ofCapacity(whole);
    // A stated charge that is a slip measures no step.
    if (!slipped) weighedIn(whole);
  },
});

/** The maker's charge against what the new unit holds. */
function ofUnit(whole: Whole): void {
  const { charge } = whole.plan.system;
  const units = whole.plan.graph.parts.filter((part) => part.properties.holds);
  const masses = units.map((part) => part.properties.holds!.mass);
  if (!charge || units.length === 0 || masses.some((mass) => mass === null)) return;
  const held = masses.reduce<number>((sum, mass) => sum + (mass ?? 0), 0);
  if (near(charge.quantity.low, held, same)) return;
  const [bound, span] = systemSpot(whole.plan, 'charge', 'mass');
  whole.reportAt(bound, span, {
    concerns: everyPart(whole.plan),
    message: (say) =>
      `The charge is stated as ${amount(whole.plan, 'mass', charge.quantity.low)}, and ${say.parts(units.map((part) => part.index))} ${units.length > 1 ? 'come' : 'comes'} with ${amount(whole.plan, 'mass', held)}: read the plate again.`,
    root: 'plate',
    related: units.map((part) => ({ part: part.index, message: 'what it comes with' })),
  });
}

/** What is to come out against what goes in; whether the two contradict each other. */
function recovered(whole: Whole): boolean {
  const { recoverCharge, charge, refrigerant } = whole.plan.system;
  if (!recoverCharge || !charge || recoverCharge.quantity.low <= 0) return false;
  const share = recoverCharge.quantity.low / charge.quantity.low;
  const samePlate = !whole.plan.kinds.includes('changeout');
  const otherUnit = unitsOf(recoverCharge) !== unitsOf(charge);
  const most = Math.min(samePlate ? outMost : otherMost, otherUnit ? otherUnitMost : otherMost);
  const least = 1 / (otherUnit ? otherUnitMost : otherMost);
  if (share <= most * 1.001 && share >= least / 1.001) return false;
  const [bound, span] = systemSpot(whole.plan, 'recover-charge', 'mass');
  whole.reportAt(bound, span, {
    concerns: everyPart(whole.plan),
    message: `${amount(whole.plan, 'mass', recoverCharge.quantity.low)} of ${refrigerant.before} are to come out, and the charge is ${amount(whole.plan, 'mass', charge.quantity.low)}${refrigerant.before === refrigerant.after ? '' : ` of ${refrigerant.after}`}: one of the two is a slip, or say at an accepted finding what was added or lost.`,
    root: 'plate',
    related: [{ bound: charge.bound, span: charge.span, message: 'the charge' }],
  });
  return true;
}

const unitsOf = ({ amount: { literal } }: Stated): string => literal.unit.system;

/** A charge that no machine of this capacity has, and a least load above the full one. */
function ofCapacity(whole: Whole): void {
  const { plan } = whole;
  const { charge, capacity, leastCapacity } = plan.system;
  if (capacity && leastCapacity && isLeastOff(leastCapacity.quantity.low / capacity.quantity.high)) {
    const [bound, span] = systemSpot(plan, 'capacity', 'least');
    whole.reportAt(bound, span, {
      concerns: everyPart(whole.plan),
      message: `Its least load is stated as ${shown(plan, leastCapacity.quantity)}, and its capacity as ${shown(plan, capacity.quantity)}: no machine works at so ${leastCapacity.quantity.low > capacity.quantity.high ? 'much' : 'little'} (common practice, no source); read both figures and their units again.`,
      root: 'plate',
      related: [{ bound: capacity.bound, span: capacity.span, message: 'the capacity' }],
    });
  }
  if (!charge || !capacity || !outOfProportion(plan)) return;
  const [bound, span] = systemSpot(plan, 'capacity', 'full');
  const { low, high } = chargePerCapacity(plan);
  const usual = [low, high].map((each) => amount(plan, 'mass', each * capacity.quantity.high));
  whole.reportAt(bound, span, {
    concerns: everyPart(whole.plan),
    message: `A machine of ${amount(plan, 'power', capacity.quantity.high)} with ${amount(plan, 'mass', charge.quantity.low)} of refrigerant is out of all proportion; no such machine holds less than ${usual[0]} or more than ${usual[1]} (common practice, no source): read charge and capacity again.`,
    root: 'plate',
    related: [{ bound: charge.bound, span: charge.span, message: 'the charge' }],
  });
}

/** What the steps weigh into an emptied machine, and the most that it is trimmed to. */
function weighedIn(whole: Whole): void {
  const { plan, entries } = whole;
  const all = chargeInAll(plan);
  const { recoverCharge, charge } = plan.system;
  if (all === null || !charge) return;
  const worked = plan.graph.parts.filter((part) => touched(plan.graph, part.index)).length;
  const gathered = keepsGathered(whole);
  const empties = (entry: Entry): boolean =>
    entry.events.some(
      (event) =>
        (event.type === 'recovers' || event.type === 'vents') &&
        event.spaces.reduce((sum, space) => sum + space.parts.length, 0) * 2 > worked &&
        !gathered(entry, event.spaces),
    );
  const brought = plan.graph.parts.reduce((sum, part) => sum + (part.properties.holds?.mass ?? 0), 0);
  const own = plan.graph.parts.some((part) => part.properties.holds);
  // The first charge of a conversion has a range of its own.
  const converted = changesRefrigerant(plan);
  // What was weighed in before the machine was emptied once more came out with the rest.
  const rounds = splitBefore(entries, empties).map((round) => round.filter(isCharge));
  const charges = rounds.at(-1)!;
  const inPlace = converted && !plan.kinds.includes('changeout');
  for (const round of own || inPlace ? [] : rounds.slice(1)) {
    if (round.length === 0) continue;
    let mass = 0;
    for (const entry of round)
      for (const event of entry.events)
        if (event.type === 'charges' && event.purpose === 'charge') mass += event.mass?.low ?? Number.NaN;
    if (Number.isNaN(mass) || near(mass, all, same) || near(mass, charge.quantity.low, same)) continue;
    if (converted && mass >= charge.quantity.low * firstCharge.least && mass <= all * firstCharge.most) continue;
    whole.report(round.at(-1)!, {
      concerns: everyPart(plan),
      message: `${amount(plan, 'mass', mass)} ${round.length > 1 ? 'in all are' : 'are'} weighed in here, and the machine takes ${amount(plan, 'mass', all)}: mend the figure, or cite the sheet.`,
      slot: 'with',
      related: [{ bound: charge.bound, span: charge.span, message: 'the charge' }],
    });
  }
  if (!own && !converted) overKept(whole, rounds[0]!, all, same);
  if (brought > 0) overOwn(whole, charges, Math.max(0, all - brought), brought);
  const most = Math.max(all, recoverCharge?.quantity.high ?? 0) * (converted ? conversionMost.quantity.high : 1 + same);
  let inside = brought;
  for (const entry of entries)
    for (const event of entry.events) {
      if (event.type === 'recovers' || event.type === 'vents') inside = 0;
      if (event.type === 'charges' && event.purpose === 'charge') inside += event.mass?.low ?? 0;
      if (event.type !== 'charges' || event.purpose !== 'adjust' || !event.mass) continue;
      if (event.mass.high < inside * 0.999) {
        whole.report(entry, {
          concerns: everyPart(plan),
          message: `The charge is trimmed to ${amount(plan, 'mass', event.mass.high)} in all at the most, and ${amount(plan, 'mass', inside)} are in it already: the limit counts the whole charge; mend one of the two.`,
          slot: 'most',
        });
        continue;
      }
      if (event.mass.high <= most * 1.05 && event.mass.high * 2 >= all) continue;
      whole.report(entry, {
        concerns: everyPart(plan),
        message: `The charge is trimmed to ${amount(plan, 'mass', event.mass.high)} at the most, and the machine takes ${amount(plan, 'mass', all)}: mend the figure, or cite the sheet.`,
        slot: entry.slot.step.spans['most'] ? 'most' : 'what',
        related: [{ bound: charge.bound, span: charge.span, message: 'the charge' }],
      });
    }
}

/** The steps up to the first that fits, then from each such step to the next. */
function splitBefore(entries: readonly Entry[], fits: (entry: Entry) => boolean): readonly (readonly Entry[])[] {
  const rounds: Entry[][] = [[]];
  for (const entry of entries) {
    if (fits(entry)) rounds.push([]);
    rounds.at(-1)!.push(entry);
  }
  return rounds;
}

/** What is weighed in over the charge that the new unit brought: the line allowance, once. */
function overOwn(whole: Whole, charges: readonly Entry[], allowance: number, brought: number): void {
  for (const entry of charges)
    for (const event of entry.events) {
      if (event.type !== 'charges' || event.purpose !== 'charge' || !event.mass) continue;
      if (event.mass.low <= allowance * (1 + same) + brought * same) continue;
      whole.report(entry, {
        concerns: everyPart(whole.plan),
        message: `${amount(whole.plan, 'mass', event.mass.low)} are weighed in here over the ${amount(whole.plan, 'mass', brought)} that the new unit brought, and the lines ask ${amount(whole.plan, 'mass', allowance)} more: weigh in the line allowance alone.`,
        slot: 'with',
      });
    }
}

const near = (one: number, other: number, share: number): boolean =>
  Math.abs(one - other) <= share * Math.max(one, other);
