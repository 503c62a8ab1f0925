import { farEnd, nearEnd, type Part } from '../../../server/engine/circuit/graph';
import { isLine, kindNamed, kindOfPlural } from '../../../server/engine/circuit/kinds';
import type { Selector } from '../../../server/engine/plan/selection';
import type { Plant } from './plant';

/** The parts that the words of a step mean, read from the circuit alone. */
export function partsMeant(plant: Plant, selectors: readonly Selector[] | undefined): readonly number[] {
  const found = new Set<number>();
  for (const selector of selectors ?? []) for (const part of one(plant, selector)) found.add(part);
  return [...found];
}

function one(plant: Plant, selector: Selector): readonly number[] {
  if (selector.of.length > 0) return partsMeant(plant, selector.of);
  const { graph } = plant;
  const { noun, standing } = selector;
  const all = graph.parts.filter((part) => !plant.untouched(part.index));
  const suits = (wanted: string | null, part: (typeof all)[number]): boolean =>
    wanted === null ||
    (wanted === 'old'
      ? plant.parts[part.index]!.mounted === 'old' && ['new', 'removed'].includes(part.standing)
      : wanted === 'new'
        ? part.standing === 'new' || part.standing === 'added'
        : wanted === 'open' || part.standing === wanted);
  const indexes = (some: readonly (typeof all)[number][]): readonly number[] => some.map((part) => part.index);
  if (noun === 'system') return indexes(all);
  if (noun === 'equipment')
    return indexes(all.filter((part) => (part.kind.equipment || withUnit(part)) && suits(standing, part)));
  if (noun === 'line' || noun === 'lines')
    return indexes(all.filter((part) => isLine(part.kind) && suits(standing, part)));
  if (noun === 'part' || noun === 'parts') return indexes(all.filter((part) => suits(standing, part)));
  const named = graph.named.get(noun);
  if (named) return named;
  const kind = kindOfPlural(noun) ?? kindNamed(noun);
  if (noun === 'expansion-valves') return indexes(all.filter((part) => part.kind.group === 'metering'));
  return kind ? indexes(all.filter((part) => part.kind.kind === kind.kind && suits(standing, part))) : [];
}

/** A stop valve that comes shut stands on the unit that it comes with. */
const withUnit = (part: Part): boolean =>
  part.kind.shuts === 'hand' && part.standing === 'new' && part.properties.closed === true;

/** The ends of a part that a step works at. */
export function endsMeant(plant: Plant, part: number, which: unknown): readonly number[] {
  const it = plant.graph.parts[part]!;
  if (it.ends.length < 2) return it.ends;
  if (which === 'far end') return [farEnd(it)];
  if (which === 'near end') return [nearEnd(it)];
  return it.ends;
}
