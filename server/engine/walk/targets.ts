import type { Graph, Part } from '../circuit/graph';
import { inUnit, isLine, kindNamed, kindOfPlural } from '../circuit/kinds';
import { type Space, spaces } from '../circuit/spaces';
import type { PartState, Plant } from '../circuit/state';
import type { Selector } from '../plan/selection';
import type { Target } from '../steps/verb';
import { type MeantPhrase, meantNoun, meantPhrase } from './meant';

/** What `each open part` asks for: which proof counts, and at which level (Pa absolute). */
export interface Wanted {
  readonly proof: 'test' | 'dryness';
  readonly level: number;
}

/** What a selector stands for on this circuit, with the plant as it stands. A thing is what is no part of the circuit. */
export function resolve(plant: Plant, selector: Selector, wanted: Wanted): Target {
  const { graph } = plant;
  if (selector.of.length > 0) {
    const parts = selector.of.flatMap((each) => resolve(plant, each, wanted).parts);
    return { selector, parts, thing: parts.length > 0 ? null : selector.text };
  }
  if (selector.standing === 'open') return { selector, parts: openParts(plant, wanted), thing: null };
  const members =
    membersOf(graph, selector.noun) ?? (selector.own === null ? meantMembers(graph, selector.noun) : null);
  const phrase = members === null && selector.own === null ? phraseIn(graph, selector.noun) : null;
  if (phrase) {
    const meant = { ...selector, standing: selector.standing ?? phrase.standing };
    const parts = phrase.nouns.flatMap((noun) => membersOf(graph, noun) ?? []);
    return { selector: meant, parts: [...new Set(parts)].filter((index) => stands(plant, index, meant)), thing: null };
  }
  if (members === null) {
    const noun = selector.own ?? selector.noun;
    return { selector: noun === selector.noun ? selector : { ...selector, noun }, parts: [], thing: noun };
  }
  return { selector, parts: members.filter((index) => stands(plant, index, selector)), thing: null };
}

/** What a noun with words too many names all the same. */
export const phraseIn = (graph: Graph, noun: string): MeantPhrase | null =>
  meantPhrase(noun, (word) => membersOf(graph, word) !== null);

/** The parts that a misspelt noun can only mean. */
function meantMembers(graph: Graph, noun: string): readonly number[] | null {
  const meant = meantNoun(graph, noun);
  return meant === null ? null : membersOf(graph, meant);
}

/** The parts that a noun may mean: a name, a kind, `line`, `equipment`, `system`. Null if it is none of the circuit's. */
export function membersOf(graph: Graph, noun: string): readonly number[] | null {
  const named = graph.named.get(noun);
  if (named) return named;
  const touched = graph.parts.filter((part) => !graph.circuits[part.circuit]?.untouched);
  if (noun === 'system') return touched.map((part) => part.index);
  if (noun === 'line' || noun === 'lines') return touched.filter((part) => isLine(part.kind)).map((part) => part.index);
  if (noun === 'part' || noun === 'parts') return touched.map((part) => part.index);
  if (noun === 'equipment')
    return touched
      .filter((part) => part.kind.equipment || stopOfUnit(graph, part) || inCasing(touched, part))
      .map((part) => part.index);
  const kind = kindNamed(noun) ?? kindOfPlural(noun);
  if (!kind) return null;
  // "expansion-valves" means every metering device that opens and shuts, driven or not.
  const also = kind.kind === 'expansion-valve' && noun !== kind.kind ? 'electronic-expansion-valve' : kind.kind;
  const found = touched
    .filter((part) => part.kind.kind === kind.kind || part.kind.kind === also)
    .map((part) => part.index);
  return found.length > 0 || kindOfPlural(noun) ? found : null;
}

/** A new part that comes in one casing with equipment: its drier, its taps, the pipe between them. */
const inCasing = (parts: readonly Part[], part: Part): boolean =>
  part.casing !== null &&
  part.standing === 'new' &&
  parts.some((each) => each.casing === part.casing && each.kind.equipment && each.standing === 'new');

/** A stop valve that is spelled out and comes shut beside a part of a new unit: it comes in the unit's casing. */
const stopOfUnit = (graph: Graph, part: Part): boolean =>
  part.kind.shuts === 'hand' &&
  part.properties.closed === true &&
  part.standing === 'new' &&
  part.ends.some((end) =>
    graph.joints[graph.ends[end]!.joint]?.ends.some((each) => {
      const other = graph.parts[graph.ends[each]!.part]!;
      return other !== part && other.standing === 'new' && inUnit(other.kind);
    }),
  );

function stands(plant: Plant, index: number, selector: Selector): boolean {
  const part = plant.graph.parts[index]!;
  const { mounted } = plant.parts[index]!;
  switch (selector.standing) {
    case null:
    case 'open':
      return true;
    case 'kept':
      return part.standing === 'kept' || part.standing === 'reused';
    case 'new':
      return part.standing === 'new' || part.standing === 'added';
    case 'added':
    case 'reused':
    case 'removed':
      return part.standing === selector.standing;
    case 'old':
      return mounted === 'old' && part.standing !== 'kept' && part.standing !== 'added';
  }
}

/**
 * Spaces that have been open since their last proof: what a test of "each open part" is about. Where all of them have
 * their proof, those that were opened are meant once more: whoever reads the line on the sheet puts gas or a pump on them.
 */
export function openSpaces(plant: Plant, wanted: Wanted): readonly Space[] {
  const opened = spaces(plant).filter(
    (space) =>
      space.parts.some((index) => plant.parts[index]!.opened !== null) &&
      !space.parts.some((index) => plant.parts[index]!.ownCharge),
  );
  const bare = opened.filter((space) => space.parts.some((index) => unproven(plant.parts[index]!, wanted)));
  return bare.length > 0 ? bare : opened;
}

function unproven(state: PartState, wanted: Wanted): boolean {
  if (state.opened === null) return false;
  return wanted.proof === 'test'
    ? state.tested === null || state.tested.level < wanted.level * 0.999
    : state.decayTested === null;
}

const openParts = (plant: Plant, wanted: Wanted): readonly number[] => {
  const found = new Set(openSpaces(plant, wanted).flatMap((space) => space.parts));
  return plant.graph.parts.filter((part) => found.has(part.index)).map((part) => part.index);
};
