import type { BringItem, Plan } from '../../plan/plan';
import type { Name } from '../../plan/term';
import type { Event } from '../../steps/events';
import type { Entry } from '../../walk/walk';
import { defineCheck, type Whole } from '../define';
import { bringing } from '../example-stock';
import { isCompressor, touched } from '../plant';
import { cylinderFor } from '../stock';
import { bringEmpty, bringMore } from '../ways-out';

/** Gas of a burnout, and gas that is still good, in one cylinder. */
export const burntGasMixed = defineCheck({
  name: 'burnt-gas-mixed',
  severity: 'warning',
  title: 'Burnt gas goes to good gas',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'In a burnout, gas of a part that was shut off with its acid, or of the circuit whose compressor burnt, goes into one cylinder with the rest of the charge or with the gas of a circuit that is sound; or it goes into a cylinder that comes with gas in it.',
  why: 'Acid spoils what could have been cleaned and used again; the whole cylinder must go to be reclaimed.',
  source: 'common practice: a cylinder of its own for burnt gas, marked (handbook 4.5)',
  wrong: {
    base: 'rack',
    plan: `kind conversion, burnout\n${bringing('recovery 1 x rc-125 empty', 'refrigerant R-448A 100 lb')}`,
    instead: [
      [
        'lock-out power\n',
        'close valve-s, valve-d\n  lock-out comp\n  recover comp to 0 inHg\n  open valve-s, valve-d\n  lock-out power\n',
      ],
      ['recover system to 0 inHg', 'recover system to 0 inHg # <- here'],
    ],
  },
  right: { base: 'rack', plan: bringing('recovery 1 x rc-125 empty', 'refrigerant R-448A 100 lb') },
  plan(whole) {
    const { plan } = whole;
    if (!plan.kinds.includes('burnout')) return;
    const all = recoveries(whole);
    const shutOff = new Set(all.flatMap(({ entry, event }) => aloneIn(plan, entry, event)));
    const emptied = new Set<number>();
    const inside = new Map<BringItem, { burnt?: Entry; good?: Entry }>();
    for (const { entry, event } of all) {
      const item = cylinderFor(plan, event.into);
      const alone = aloneIn(plan, entry, event);
      const gas = gasOf(plan, entry, event, alone, shutOff, emptied);
      for (const compressor of alone) emptied.add(compressor);
      // Several cylinders of a kind are kept apart; with a label there is one of them.
      if (!item || item.number > 1 || gas === null) continue;
      const held = inside.get(item) ?? {};
      inside.set(item, held);
      const other = gas === 'burnt' ? held.good : held.burnt;
      held[gas] ??= entry;
      const name = item.label ?? item.name;
      if (other)
        whole.report(entry, {
          message: (say) =>
            gas === 'good'
              ? `${name} holds burnt gas since ${say.step(other.cause)}: recover the rest into another cylinder.`
              : `${name} holds good gas since ${say.step(other.cause)}: recover the burnt gas into a cylinder of its own.`,
          slot: 'into',
          root: item,
          fixes: bringMore(item, 2),
          related: [{ cause: other.cause, message: `${gas === 'good' ? 'burnt' : 'good'} gas goes in here` }],
        });
      else if (gas === 'burnt' && comesWith(item, event))
        whole.report(entry, {
          message: `${name} comes with ${comesWith(item, event)} in it, and burnt gas goes to it here: bring an empty cylinder for that.`,
          slot: 'into',
          root: item,
          fixes: bringEmpty(item),
          related: [{ bound: item.bound, message: 'this cylinder' }],
        });
    }
  },
});

type Recovers = Extract<Event, { type: 'recovers' }>;

const recoveries = ({ entries }: Whole): readonly { readonly entry: Entry; readonly event: Recovers }[] =>
  entries.flatMap((entry) =>
    entry.events.flatMap((event) => (event.type === 'recovers' && event.spaces.length > 0 ? [{ entry, event }] : [])),
  );

const partsOf = (event: Recovers): readonly number[] => event.spaces.flatMap((space) => space.parts);

/** Old compressors that are recovered on their own: one of these is the burnt one. */
function aloneIn(plan: Plan, entry: Entry, event: Recovers): readonly number[] {
  const { parts } = plan.graph;
  const own = partsOf(event);
  return own.filter(
    (index) =>
      isCompressor(parts[index]!) &&
      entry.before.parts[index]!.mounted === 'old' &&
      own.length < parts.filter(({ circuit }) => circuit === parts[index]!.circuit).length / 2,
  );
}

/** What comes out: burnt, still good, or nothing that can be told from the rest. */
function gasOf(
  plan: Plan,
  entry: Entry,
  event: Recovers,
  alone: readonly number[],
  shutOff: ReadonlySet<number>,
  emptied: ReadonlySet<number>,
): 'burnt' | 'good' | null {
  if (alone.length > 0) return 'burnt';
  const own = partsOf(event);
  // A burnout in which all is recovered at once has no good gas, unless what burnt was shut off and emptied before.
  if (shutOff.size > 0) return own.some((index) => shutOff.has(index) && !emptied.has(index)) ? 'burnt' : 'good';
  const burnt = burntCircuits(plan);
  const circuits = new Set(own.map((index) => plan.graph.parts[index]!.circuit));
  const isOld = own.some(
    (index) => isCompressor(plan.graph.parts[index]!) && entry.before.parts[index]!.mounted === 'old',
  );
  if (burnt.size === 0) return isOld ? 'burnt' : null;
  if (![...circuits].some((circuit) => burnt.has(circuit))) return 'good';
  return isOld ? 'burnt' : null;
}

/** Of several circuits that are worked on, those whose compressor is replaced; none where that tells no two apart. */
function burntCircuits({ graph }: Plan): ReadonlySet<number> {
  const compressors = graph.parts.filter((part) => isCompressor(part) && touched(graph, part.index));
  const burnt = new Set(compressors.filter(({ standing }) => standing !== 'kept').map(({ circuit }) => circuit));
  return compressors.some(({ circuit }) => !burnt.has(circuit)) ? burnt : new Set();
}

/** The refrigerant that a cylinder comes with, where it is the one that is recovered; another one is told elsewhere. */
function comesWith(item: BringItem, event: Recovers): string | null {
  const holding = (item.bound.values['holding'] as Name | undefined)?.text;
  return holding !== undefined && event.held.every(({ refrigerant }) => refrigerant === holding) ? holding : null;
}
