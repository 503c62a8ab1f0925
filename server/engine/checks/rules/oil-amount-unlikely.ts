import type { Amount, Name } from '../../plan/term';
import { isProblem, toQuantity } from '../../quantity';
import { standardAtmosphere } from '../../reference/table-units';
import { defineCheck, type Here } from '../define';
import { amount, edits } from '../support';

/** A drain leaves this share behind where the step states none: 20 to 50 % (handbook 4.2). */
const leftBehind = 0.5;
/** No filling is more than this times the oil that the machine holds, nor less than this share of what a drain took out. */
const fillMost = 1.5;
const fillLeast = 0.4;
/** More than this share on top of the oil that is in already is no topping up for long lines. */
const topUpMost = 0.5;

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
    'The circuit states how much oil a compressor holds, and a step puts in more than one and a half times of that, or less than two fifths of what a drain took out, or tops a full compressor up by more than half. Silent where the step cites a sheet with `per`.',
  why: 'Too much oil slugs and lies in the evaporator; a compressor with a tenth of its oil seizes. Either is mostly a slip of the figure or of its unit.',
  source: 'a drain takes out 50 to 80 % (handbook 4.2); limits of the filling: common practice, no source',
  wrong: { base: 'rack', instead: [['to POE 140 fl-oz, leaving 30 %', 'to POE 14 fl-oz, leaving 30 % # <- here']] },
  right: { base: 'rack' },
  step(here) {
    if (here.per) return;
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

/** What a step puts into compressors whose oil is stated, and between which limits. */
function fillings(here: Here): readonly Filling[] {
  const { graph, parts } = here.before;
  const changed = here.events('changes-oil');
  const slot = changed.length > 0 ? 'to' : 'with';
  const pair = here.step.values[slot] as { readonly a: Name; readonly b?: Amount } | undefined;
  const adds = [...here.after.marks].some(([mark, by]) => by === here.entry.cause && mark.startsWith('add-oil '));
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
    if (!holds) return [];
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
