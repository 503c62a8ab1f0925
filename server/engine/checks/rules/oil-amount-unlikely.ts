import type { Part } from '../../circuit/graph';
import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import type { Plan } from '../../plan/plan';
import type { Amount, Name } from '../../plan/term';
import { isProblem, toQuantity } from '../../quantity';
import { standardAtmosphere } from '../../reference/table-units';
import { leaves } from '../course';
import { defineCheck, type Here } from '../define';
import { touched } from '../plant';
import { amount, edits } from '../support';
import { writeAt } from '../ways-out';

/** A drain leaves this share behind where the step states none: 20 to 50 % (handbook 4.2). */
const leftBehind = 0.5;
/** Less than this stays behind only where the compressor is taken off and tipped out (common practice, no source). */
const leastLeft = 0.08;
/** No filling is more than this times the oil that the machine holds, nor less than this share of what a drain took out. */
const fillMost = 1.5;
const fillLeast = 0.7;
/** More than this share on top of the oil that is in already is no topping up for long lines. */
const topUpMost = 0.5;

/** No one compressor holds more oil than this for the charge of its machine, m3/kg (40 fl-oz a lb; common practice, no source). */
const perCharge = 0.0026;
/** Nor, where the capacity is known, than this, m3/W (120 fl-oz for 12,000 Btu/h; common practice, no source). */
const perCapacity = 1.0e-6;

/** Whether a compressor is stated to hold more oil than its machine can want. */
function isBeyond({ system }: Plan, part: Part): boolean {
  const oil = part.properties.oil?.volume;
  const charge = system.charge?.quantity.high;
  if (!oil || !charge || oil <= charge * perCharge) return false;
  return !system.capacity || oil > system.capacity.quantity.high * perCapacity;
}

interface Filling {
  readonly part: number;
  readonly oil: Name;
  readonly volume: number;
  /** As the step writes it. */
  readonly unit: string;
  /** The clause that states it. */
  readonly slot: 'with' | 'to';
  readonly least: number;
  readonly most: number;
}

/** Oil put into a compressor that cannot be meant, by the oil that it holds. */
export const oilAmountUnlikely = defineCheck({
  name: 'oil-amount-unlikely',
  severity: 'warning',
  title: 'The oil that goes in does not fit what the compressor holds',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The circuit states how much oil a compressor holds, and a step puts in more than one and a half times of that, or less than seven tenths of what a drain took out, or tops a full compressor up by more than half; or a drain is said to leave next to nothing behind; or a compressor is stated to hold more oil than any machine of that charge and capacity. Silent where the step cites a sheet with `per`.',
  why: 'Too much oil slugs and lies in the evaporator; a compressor with half of its oil seizes. Either is mostly a slip of the figure or of its unit.',
  source: 'a drain takes out 50 to 80 % (handbook 4.2); limits of the filling: common practice, no source',
  wrong: { base: 'rack', instead: [['to POE 140 fl-oz, leaving 30 %', 'to POE 14 fl-oz, leaving 30 % # <- here']] },
  right: { base: 'rack' },
  plan(whole) {
    const { plan } = whole;
    for (const part of plan.graph.parts) {
      const stated = child(plan.partStatements[part.index]?.block ?? [], 'oil');
      if (!stated || !touched(plan.graph, part.index) || !isBeyond(plan, part)) continue;
      const { charge, capacity } = plan.system;
      const machine = `${amount(plan, 'mass', charge!.quantity.high)} of refrigerant${capacity ? ` and ${amount(plan, 'power', capacity.quantity.high)}` : ''}`;
      whole.reportAt(stated, stated.spans['volume'] ?? wordSpan(stated), {
        message: `${part.name} is stated to hold ${amount(plan, 'volume', part.properties.oil!.volume)} of oil, which no machine with ${machine} wants (common practice, no source); read figure and unit again.`,
        concerns: [part.index],
        related: charge ? [{ bound: charge.bound, span: charge.span, message: 'the charge' }] : [],
      });
    }
  },
  step(here) {
    if (here.per) return;
    drained(here);
    for (const filling of fillings(here)) {
      const { part, volume, least, most, slot, oil } = filling;
      if (volume <= most * 1.001 && volume >= least * 0.999) continue;
      const inOil = (value: number): string => amount(here.plan, 'volume', value, filling.unit);
      const it = here.plan.graph.parts[part]!;
      const holds = inOil(it.properties.oil!.volume);
      const full = most > it.properties.oil!.volume;
      here.report({
        message: `${inOil(volume)} of oil go into ${it.name}, which holds ${holds}${full ? '' : ' and is not drained before'}: ${volume > most ? `more than ${inOil(most)} floods it` : `less than ${inOil(least)} leaves it dry`} (common practice, no source); read figure and unit again, or cite the sheet.`,
        slot,
        concerns: [part],
        related: [{ part, message: 'the oil that it holds' }],
        fixes: full
          ? [
              {
                title: `Fill with ${holds}`,
                edits: (mend) => edits(mend.replace(here.step, slot, `${slot} ${oil.text} ${holds}`)),
              },
            ]
          : [],
      });
    }
  },
});

/** A drain that is said to take out more than any does: the rounds are counted with it, and the old oil stays over its share. */
function drained(here: Here): void {
  const stated = here.step.values['leaving'] as Amount | undefined;
  if (!stated?.literal || here.events('changes-oil').length === 0) return;
  const share = toQuantity(stated.literal, 'share', standardAtmosphere);
  if (isProblem(share) || share.high >= leastLeft) return;
  here.report({
    message: `A drain leaves 20 to 50 % of the oil behind (handbook 4.2), and ${share.high === 0 ? 'nothing' : `${Math.round(share.high * 1000) / 10} %`} is counted with here: measure what comes out, read the figure again, or cite the sheet.`,
    slot: 'leaving',
    root: 'leaving',
    concerns: here.events('changes-oil').map(({ part }) => part),
    fixes: writeAt(here.step, stated, '30 %'),
  });
}

/** What a step puts into compressors whose oil is stated, and between which limits. */
function fillings(here: Here): readonly Filling[] {
  const { graph, parts } = here.before;
  const changed = here.events('changes-oil');
  const slot = changed.length > 0 ? 'to' : 'with';
  const pair = here.step.values[slot] as { readonly a: Name; readonly b?: Amount } | undefined;
  const adds = leaves(here.entry, /^add-oil /);
  if (!pair?.b?.literal || pair.b.kind !== 'volume' || (changed.length === 0 && !adds)) return [];
  const volume = read(pair.b);
  if (volume === null) return [];
  const unit = pair.b.literal.unit.name;
  const meant =
    changed.length > 0
      ? changed.map((event) => event.part)
      : graph.parts
          .filter((part) => here.after.marks.get(`add-oil ${part.name}`) === here.entry.cause)
          .map((part) => part.index);
  return meant.flatMap((part) => {
    const holds = graph.parts[part]!.properties.oil?.volume;
    // A declared amount that cannot be is told at its place, and measures nothing.
    if (!holds || isBeyond(here.plan, graph.parts[part]!)) return [];
    const state = parts[part]!;
    const common = { part, oil: pair.a, volume, unit, slot } as const;
    const leaving = read(here.step.values['leaving'] as Amount | undefined) ?? leftBehind;
    const drained = changed.length > 0 || state.drained !== null;
    const least = drained ? holds * (1 - leaving) * fillLeast : 0;
    // One that came off may have been tipped, and a new one may come dry.
    const empty = drained || state.renewed !== null || state.setBy !== null;
    return [{ ...common, least, most: holds * (empty ? fillMost : topUpMost) }];
  });
}

function read(value: Amount | undefined): number | null {
  if (!value?.literal) return null;
  const quantity = toQuantity(value.literal, value.kind, standardAtmosphere);
  return isProblem(quantity) ? null : quantity.high;
}
