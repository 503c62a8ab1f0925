import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openingAt } from '../../../server/engine/circuit/spaces';
import type { Cause, PartState, Plant } from '../../../server/engine/circuit/state';
import type { Walk } from '../../../server/engine/walk/walk';
import { Workspace } from '../../../server/engine/workspace';
import { type Level, type PartExpectation, type PlantExpectation, readTable } from './table';

const samples = new URL('../../fixtures/samples/', import.meta.url);
const tables = new URL('../../fixtures/states/', import.meta.url);

function walkOf(name: string): Walk {
  const workspace = new Workspace();
  workspace.setFile(`${name}.jobplan`, readFileSync(new URL(`${name}.jobplan`, samples), 'utf8'));
  for (let wanted = workspace.wanted(); wanted.length > 0; wanted = workspace.wanted()) {
    for (const path of wanted) workspace.setFile(path, readFileSync(new URL(path, samples), 'utf8'));
  }
  return workspace.snapshot().plans(`${name}.jobplan`)[0]!.walk;
}

const psi = 6894.757;
/** Saturated charges are held to 2 psi, the difference between two printed charts; stated levels to a thousandth. */
const near = (actual: number, expected: number, within: number): boolean => Math.abs(actual - expected) <= within;
const showLevel = ({ low, high }: Level): string =>
  low === high
    ? `${(low / psi).toPrecision(4)} psia`
    : `${(low / psi).toPrecision(4)}..${(high / psi).toPrecision(4)} psia`;

/** Every difference of a part from its table, as "what: table …, walk …". */
function differences(
  plant: Plant,
  index: number,
  expected: PartExpectation,
  numbers: ReadonlyMap<Cause, number>,
): string[] {
  const part = plant.graph.parts[index]!;
  const state = plant.parts[index]!;
  const found: string[] = [];
  const same = (what: string, table: unknown, walk: unknown): void => {
    if (table !== walk) found.push(`${what}: table ${String(table)}, walk ${String(walk)}`);
  };
  same('mounted', expected.mounted, state.mounted);
  if (expected.mounted === 'none') return found;

  expected.passages.forEach((passage, k) => {
    const of = expected.passages.length > 1 ? ` of passage ${k + 1}` : '';
    const held = state.contents[k]!;
    same(`gas${of}`, passage.holds.gas, held.gas);
    same(`refrigerant${of}`, passage.holds.refrigerant, held.refrigerant);
    same(`liquid${of}`, passage.holds.liquid, held.liquid);
    const { level } = passage.holds;
    const within = (value: number): number => (passage.holds.liquid ? 2 * psi : value * 1e-3);
    if (!near(held.low, level.low, within(level.low)) || !near(held.high, level.high, within(level.high))) {
      found.push(`pressure${of}: table ${showLevel(level)}, walk ${showLevel(held)}`);
    }
    (['inlet', 'outlet'] as const).forEach((side, s) => {
      const end = plant.graph.ends[part.ends[k * 2 + s]!]!;
      const at = plant.ends[end.index]!;
      const opening = openingAt(plant, end);
      const closure = passage.closures[s] ?? null;
      same(`open at ${side}${of}`, passage.open[s], opening !== null);
      same(`closure at ${side}${of}`, closure?.kind ?? null, at.closure?.kind ?? null);
      same(`hole at ${side}${of}`, mm(closure?.hole), mm(at.closure?.opening));
      if (opening && closure?.hole)
        same(`width of the opening at ${side}${of}`, mm(closure.hole), mm(opening.diameter));
      same(`valve at ${side}${of}`, passage.valves[s], at.valve);
    });
  });
  same('position', expected.position, state.heldBy ? `${state.position} by ${state.heldBy}` : state.position);
  same('wet', expected.wet, state.wet !== null);
  const share = state.residue.oil === null ? 0 : state.residue.share;
  if (!near(share, expected.oilShare, 1e-6)) found.push(`old oil: table ${expected.oilShare}, walk ${share}`);
  same('acid', expected.acid, state.residue.acid);
  same('opened at step', expected.opened, state.opened && (numbers.get(state.opened) ?? 'unknown'));
  proof('tested', expected.tested, state.tested);
  proof('evacuated', expected.evacuated, state.evacuated);
  same('decay-tested', expected.decayTested, state.decayTested !== null);
  same('own charge', expected.ownCharge, state.ownCharge);
  same('cores', expected.cores, state.cores);
  return found;

  function proof(what: string, table: Level | null, walk: PartState['tested']): void {
    if (table && walk ? !near(walk.level, table.low, table.low * 1e-3) : table !== walk) {
      found.push(
        `${what}: table ${table ? showLevel(table) : 'no'}, walk ${walk ? showLevel({ low: walk.level, high: walk.level }) : 'no'}`,
      );
    }
  }
}

const mm = (metres: number | null | undefined): string | null => (metres ? `${(metres * 1000).toFixed(2)} mm` : null);

function plantDifferences(plant: Plant, expected: PlantExpectation): string[] {
  const list = (names: Iterable<string>): string => [...names].sort().join(', ');
  const pairs: readonly (readonly [string, unknown, unknown])[] = [
    ['power', expected.power, plant.power],
    ['running', expected.running, plant.running],
    ['out of action', list(expected.outOfAction), list(plant.bypassed.keys())],
    [
      'locked out',
      list(expected.lockedOut),
      list([...plant.lockedOut.keys()].map((index) => plant.graph.parts[index]!.name)),
    ],
  ];
  return pairs
    .filter(([, table, walk]) => table !== walk)
    .map(([what, table, walk]) => `${what}: table ${table}, walk ${walk}`);
}

describe.each(['changeout-split', 'ductless-three-zone', 'rack-conversion'])('states of %s', (name) => {
  const walk = walkOf(name);
  const { graph } = walk.start;
  const table = readTable(
    readFileSync(new URL(`${name}.state.txt`, tables), 'utf8'),
    new Map(graph.parts.map((part) => [part.name, part.ends.length / 2])),
  );
  const numbers = new Map(walk.entries.map((entry, k) => [entry.cause, k + 1]));

  it('has a line for every step of the walk, in its order', () => {
    const walked = walk.entries.map(({ slot }, k) => `${k + 1} ${slot.round ?? ''} ${slot.step.text}`);
    expect(table.slice(1).map((step) => `${step.number} ${step.round ?? ''} ${step.text}`)).toEqual(walked);
  });
  it('speaks of every part', () => {
    expect([...table[0]!.parts.keys()].sort()).toEqual(graph.parts.map((part) => part.name).sort());
  });
  it.each(table.map((step) => [`${step.number} ${step.text}`, step] as const))(
    'stands as the table says after %s',
    (_, step) => {
      const plant = step.number === 0 ? walk.start : walk.entries[step.number - 1]!.after;
      const found = graph.parts.flatMap((part) =>
        differences(plant, part.index, step.parts.get(part.name)!, numbers).map((each) => `${part.name}: ${each}`),
      );
      expect([...plantDifferences(plant, step.plant).map((each) => `plant: ${each}`), ...found]).toEqual([]);
    },
  );
});
