import {
  buildGraph,
  type CircuitSpec,
  type Graph,
  type PartSpec,
  type Properties,
  type Series,
  type SeriesItem,
  type Standing,
  type Trap,
  type Tube,
} from '../circuit/graph';
import { kindNamed } from '../circuit/kinds';
import { nearestTube, type TubeStandard, tubeNamed } from '../reference/tubes';
import { type Bound, child, children } from './bind';
import { type Gather, stated, wordSpan } from './gather';
import type { Scope } from './scope';
import type { Amount, Name } from './term';

/** Parts and passages of a plan that are walked: the largest supermarket rack has a few hundred. */
const mostPassages = 500;

interface Named {
  readonly bound: Bound;
  readonly name: string;
}

/** Builds the circuits of a plan from their blocks, with the statement of each part in the graph's order. */
export function assembleCircuits(
  blocks: readonly Bound[],
  scope: Scope,
  atmosphere: number,
  gather: Gather,
): { specs: readonly CircuitSpec[]; graph: Graph; statements: readonly Bound[] } {
  const statements: Bound[] = [];
  const names = new Map<string, Bound>();
  const throughs: Named[] = [];
  const sectionEnds: Named[] = [];

  const claim = (name: string, bound: Bound): void => {
    const before = names.get(name);
    if (before) {
      const span = bound.label ?? wordSpan(bound);
      gather.report(
        'duplicate-name',
        'error',
        `Two parts of the circuit are called "${name}"; give this one a label of its own.`,
        bound,
        span,
      );
    } else names.set(name, bound);
  };

  let passages = 0;
  /** Counts a passage; false where there are too many, which the first one over tells. */
  const hasRoom = (bound: Bound): boolean => {
    passages++;
    if (passages === mostPassages + 1) {
      const message = `There are more than ${mostPassages} parts in the plan's circuits; those from here on are not looked at.`;
      gather.report('too-large', 'error', message, bound, wordSpan(bound));
    }
    return passages <= mostPassages;
  };

  const seriesOf = (block: readonly Bound[], sections: CircuitSpec['sections'][number][]): Series => {
    const series: SeriesItem[] = [];
    for (const bound of block) {
      const word = bound.word?.word;
      if (!word) continue;
      if (kindNamed(word)) {
        if (!hasRoom(bound)) continue;
        const name = bound.label?.text ?? word;
        claim(name, bound);
        statements.push(bound);
        series.push({ type: 'part', part: partOf(bound, name, scope, atmosphere, gather) });
      } else if (word === 'parallel') {
        const branches = children(bound.block, 'branch').map((branch) => ({
          name: (branch.values['name'] as Name | undefined)?.text ?? null,
          series: seriesOf(branch.block, sections),
        }));
        series.push({ type: 'parallel', name: bound.label?.text ?? null, branches });
      } else if (word === 'unit') {
        // One way through, under a name: steps can then speak of the unit as a whole.
        const name = (bound.values.name as Name | undefined)?.text ?? null;
        const branches = [{ name: null, series: seriesOf(bound.block, sections) }];
        series.push({ type: 'parallel', name, branches, casing: true });
      } else if (word === 'through') {
        const part = bound.values['part'] as Name | undefined;
        if (!part || !hasRoom(bound)) continue;
        throughs.push({ bound, name: part.text });
        series.push({ type: 'through', name: part.text });
      } else if (word === 'section') {
        const [name, from, to] = [bound.values['name'], bound.values['from'], bound.values['to']] as (
          | Name
          | undefined
        )[];
        if (!name || !from || !to) continue;
        sections.push({ name: name.text, from: from.text, to: to.text });
        sectionEnds.push({ bound, name: from.text }, { bound, name: to.text });
      }
    }
    return series;
  };

  const specs = blocks.map((bound): CircuitSpec => {
    const sections: CircuitSpec['sections'][number][] = [];
    const series = seriesOf(bound.block, sections);
    return { name: bound.label?.text ?? null, untouched: bound.values['untouched'] === true, series, sections };
  });
  const graph = buildGraph(specs);
  for (const { bound, name } of [...throughs, ...sectionEnds]) {
    if (graph.named.has(name)) continue;
    const span = Object.values(bound.spans).find((each) => each !== undefined) ?? wordSpan(bound);
    gather.unknownName('part', name, bound, span, graph.named.keys());
  }
  return { specs, graph, statements };
}

function partOf(bound: Bound, name: string, scope: Scope, atmosphere: number, gather: Gather): PartSpec {
  const kind = kindNamed(bound.word!.word)!;
  const standing = (bound.values['standing'] as Standing | undefined) ?? 'kept';
  return { name, kind, standing, properties: propertiesOf(bound, scope, atmosphere, gather) };
}

function propertiesOf(bound: Bound, scope: Scope, atmosphere: number, gather: Gather): Properties {
  const block = bound.block;
  const amount = (word: string, slot: string): number | undefined =>
    stated(child(block, word), slot, atmosphere, gather)?.quantity.low;
  const set: { -readonly [K in keyof Properties]: Properties[K] } = {};
  const tube = tubeOf(block, scope, atmosphere, gather);
  if (tube) set.tube = tube;
  for (const [key, word, slot] of [
    ['length', 'length', 'length'],
    ['rise', 'rise', 'height'],
    ['drop', 'drop', 'height'],
    ['rated', 'rated', 'pressure'],
    ['relief', 'relief', 'pressure'],
    ['volume', 'volume', 'volume'],
    ['bore', 'bore', 'diameter'],
  ] as const) {
    const value = amount(word, slot);
    if (value !== undefined) set[key] = value;
  }
  const traps = children(block, 'trap').map(
    (each): Trap => ({
      at: stated(each, 'at', atmosphere)?.quantity.low ?? 0,
      depth: stated(each, 'depth', atmosphere)?.quantity.low ?? 0,
    }),
  );
  if (traps.length > 0) set.traps = traps;
  const elbows = child(block, 'elbows');
  if (elbows)
    set.elbows = {
      count: (elbows.values['number'] as number | undefined) ?? 0,
      kind: (elbows.values['kind'] as string | undefined) ?? 'standard',
    };
  const joint = child(block, 'joint')?.values['kind'];
  if (joint) set.joint = joint as NonNullable<Properties['joint']>;
  const holds = child(block, 'holds');
  const gas = holds?.values['refrigerant'] as Name | undefined;
  if (gas) set.holds = { refrigerant: gas.text, mass: stated(holds, 'mass', atmosphere, gather)?.quantity.low ?? null };
  const valves = child(block, 'valves')?.values['position'];
  if (valves) set.valves = valves as 'open' | 'closed';
  if (child(block, 'closed')) set.closed = true;
  const oil = child(block, 'oil')?.values['charge'] as { a: Amount; b?: Name } | undefined;
  const oilVolume = stated(
    child(block, 'oil') && { ...child(block, 'oil')!, values: { amount: oil?.a } },
    'amount',
    atmosphere,
  )?.quantity.low;
  if (oil && oilVolume !== undefined) set.oil = { kind: oil.b?.text ?? null, volume: oilVolume };
  const core = child(block, 'core')?.values['kind'];
  if (core) set.core = core as string;
  const capacity = child(block, 'capacity');
  const full = stated(capacity, 'full', atmosphere, gather)?.quantity.low;
  if (full !== undefined) set.capacity = { full, least: stated(capacity, 'least', atmosphere)?.quantity.low ?? null };
  if (child(block, 'leak-sensor')) set.sensor = true;
  if (child(block, 'both-ways')) set.bothWays = true;
  const per: Record<string, string> = {};
  for (const each of block)
    if (each.word && typeof each.values['per'] === 'string') per[each.word.word] = each.values['per'];
  if (Object.keys(per).length > 0) set.per = per;
  return set;
}

function tubeOf(block: readonly Bound[], scope: Scope, atmosphere: number, gather: Gather): Tube | undefined {
  const bound = child(block, 'tube');
  if (!bound) return undefined;
  const outsideWord = bound.values['outside'] as Amount | Name | undefined;
  if (!outsideWord) return undefined;
  const wallStated = stated(child(block, 'wall'), 'thickness', atmosphere, gather);
  const measured = child(block, 'wall')?.values['measured'] === true;
  if ('refers' in outsideWord) {
    const declared = scope.find('tube', outsideWord.text);
    if (!declared) {
      gather.unknownName(
        'tube',
        outsideWord.text,
        bound,
        { from: outsideWord.from, to: outsideWord.to },
        scope.names('tube'),
      );
      return undefined;
    }
    const outside = stated(child(declared.bound.block, 'outside'), 'diameter', atmosphere)?.quantity.low;
    const wall =
      wallStated?.quantity.low ?? stated(child(declared.bound.block, 'wall'), 'thickness', atmosphere)?.quantity.low;
    return outside === undefined || wall === undefined ? undefined : checked(outside, wall, declared.name);
  }
  const outside = stated(bound, 'outside', atmosphere, gather)?.quantity.low;
  if (outside === undefined) return undefined;
  const word = bound.values['standard'] as string | undefined;
  const standard: TubeStandard = word === 'EN' ? 'EN' : 'ACR';
  const temper = word === 'drawn' || word === 'annealed' ? word : undefined;
  const shown = `${outsideWord.literal.text}${word ? ` ${word}` : ''}`;
  if (wallStated) return checked(outside, wallStated.quantity.low, shown);
  const found = tubeNamed(outside, standard, temper);
  if (found) return { shown, outside: found.outsideDiameter, wall: found.wall, bore: found.bore, measured: false };
  const near = nearestTube(outside, standard, temper);
  gather.report(
    'unknown-tube',
    'error',
    `${standard === 'EN' ? 'EN 12735-1' : 'ASTM B280'} has no tube of ${outsideWord.literal.text} outside; the nearest is ${near.name}. For another tube state its wall.`,
    bound,
    { from: outsideWord.from, to: outsideWord.to },
    [near.name],
  );
  return undefined;

  function checked(outside: number, wall: number, shown: string): Tube | undefined {
    if (wall * 2 >= outside) {
      const at = child(block, 'wall') ?? bound!;
      gather.report(
        'impossible',
        'error',
        'A wall this thick leaves no bore: twice the wall is not less than the outside diameter.',
        at,
        Object.values(at.spans)[0] ?? wordSpan(at),
      );
      return undefined;
    }
    return { shown, outside, wall, bore: outside - 2 * wall, measured };
  }
}
