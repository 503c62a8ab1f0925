import { openingAt, spacesOf } from '../circuit/spaces';
import { type Cause, type Contents, holds, type PartState, type Plant } from '../circuit/state';
import { between, show } from '../quantity';

/** One fact about a part as it stands: "nitrogen at 450 psig", with the step that made it so. */
export interface Fact {
  readonly text: string;
  /** Null where the job began so; undefined where nobody would ask. */
  readonly by?: Cause | null;
}

/** How a part stands between two steps, fact by fact, the weightiest first. Pressures count from the site's atmosphere. */
export function tellPart(plant: Plant, index: number): readonly Fact[] {
  const part = plant.graph.parts[index];
  const state = plant.parts[index];
  if (!part || !state) return [];
  if (state.mounted === 'none') return [{ text: part.standing === 'added' ? 'not there yet' : 'off' }];
  const facts: Fact[] = [];
  const comes = part.standing === 'new' || part.standing === 'removed';
  if (comes || part.standing === 'reused')
    facts.push({ text: state.mounted === 'old' ? 'the old one is in place' : 'in place' });
  state.contents.forEach((contents, passage) => {
    if (passage > 0 && contents === state.contents[0]) return;
    const where = state.contents.length > 1 ? ` (passage ${passage + 1})` : '';
    facts.push({ text: `holds ${tellContents(contents, plant.atmosphere)}${where}`, by: contents.since });
  });
  if (state.ownCharge) facts.push({ text: 'its own charge is shut in behind its valves' });
  if (state.position)
    facts.push({
      text:
        state.position === 'control'
          ? 'under control'
          : `${state.position}${state.heldBy ? `, held by ${state.heldBy}` : ''}`,
    });
  facts.push(...tellEnds(plant, index), ...tellProofs(state, plant.atmosphere));
  return facts;
}

/** "air", "R-22, liquid and vapour, at 100..145 psig", "vacuum of 500 micron". */
export function tellContents(contents: Contents, atmosphere: number): string {
  const level = show(between('pressure', contents.low, contents.high), { atmosphere });
  if (contents.gas === 'vacuum')
    return `a vacuum of ${level}${contents.refrigerant ? `, with traces of ${contents.refrigerant}` : ''}`;
  const name = holds(contents);
  const nearly = Math.abs(contents.high - atmosphere) < atmosphere * 0.001 && contents.low === contents.high;
  if (nearly) return contents.gas === 'air' ? 'air' : `${name}, at no pressure`;
  return `${name}${contents.liquid ? ', liquid and vapour,' : ''} at ${level}`;
}

function tellEnds(plant: Plant, index: number): readonly Fact[] {
  const facts: Fact[] = [];
  const own = plant.graph.parts[index]!.ends.map((end) => plant.graph.ends[end]!);
  for (const end of own) {
    const { attached, closure, valve, detachedBy } = plant.ends[end.index]!;
    const name = own.length > 2 ? `${end.side} ${end.passage + 1}` : end.side;
    if (valve === 'shut') facts.push({ text: `valve at the ${name} shut` });
    if (closure)
      facts.push({
        text: `${name} closed by a ${closure.kind}${closure.opening === null ? '' : ` that leaves ${show({ kind: 'length', low: closure.opening, high: closure.opening })}`}`,
        by: closure.by,
      });
    else if (!attached) facts.push({ text: `${name} undone`, by: detachedBy });
    else if (openingAt(plant, end)) facts.push({ text: `${name} open to the air` });
  }
  const spaces = spacesOf(plant, index);
  const open = spaces.some((space) => space.openings.length > 0);
  if (open && facts.every((fact) => !fact.text.includes('open to')))
    facts.push({ text: 'hangs together with an open end' });
  return facts;
}

function tellProofs(state: PartState, atmosphere: number): readonly Fact[] {
  const facts: Fact[] = [];
  const level = (value: number): string => show({ kind: 'pressure', low: value, high: value }, { atmosphere });
  if (state.wet) facts.push({ text: 'wet with solvent', by: state.wet });
  else if (state.finalPurge) facts.push({ text: 'purged of solvent', by: state.finalPurge });
  if (state.residue.oil && state.residue.share > 0) facts.push({ text: `old ${state.residue.oil} oil in it` });
  if (state.residue.acid) facts.push({ text: 'acid in it' });
  if (state.opened) facts.push({ text: 'opened to air', by: state.opened });
  if (state.tested) facts.push({ text: `tested at ${level(state.tested.level)}`, by: state.tested.by });
  if (state.evacuated) facts.push({ text: `evacuated to ${level(state.evacuated.level)}`, by: state.evacuated.by });
  if (state.decayTested) facts.push({ text: 'held its vacuum', by: state.decayTested.by });
  if (state.cores === 'out') facts.push({ text: 'cores out' });
  return facts;
}
