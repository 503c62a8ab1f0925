import { expect, it } from 'vitest';
import { spaces } from '../../../server/engine/circuit/spaces';
import type { Plant } from '../../../server/engine/circuit/state';
import { Workspace } from '../../../server/engine/workspace';

/** The plant of a small plan after its steps. */
function after(parts: string, steps: string): Plant {
  const workspace = new Workspace();
  workspace.setFile(
    'a.jobplan',
    `plan a {\nkind conversion, burnout\nsystem {\nrefrigerant R-22 -> R-448A\noil mineral -> POE\n}\ncircuit {\n${parts}\n}\nsteps {\n${steps}\n}\n}\n`,
  );
  return workspace.snapshot().plans('a.jobplan')[0]!.walk.entries.at(-1)!.after;
}

const ring = (standing: string) =>
  `compressor kept\ncondenser kept\nx: filter-drier ${standing}\nvalves: ball-valve kept\nexpansion-valve kept\nevaporator kept`;

// By the meaning of the words: what is kept and taken off comes back as it was, with its oil and acid; what is new does not.
it.each([
  ['kept', { renewed: false, oil: 'mineral', acid: true }],
  ['reused', { renewed: false, oil: 'mineral', acid: true }],
  ['new', { renewed: true, oil: null, acid: false }],
])('a part that is %s, cut out and set again', (standing, expected) => {
  const state = after(ring(standing), 'cut-out x\ninstall x').parts[2]!;
  expect({ renewed: state.renewed !== null, oil: state.residue.oil, acid: state.residue.acid }).toEqual(expected);
});

// With the power it runs again, if nobody stopped it and its charge stayed in (common practice, no source).
it.each([
  ['a lock-out', 'lock-out power\nrestore power', true],
  ['a lock-out with the controls live for a while', 'lock-out power\nenergise controls\nrestore power', true],
  ['a lock-out while it was stopped', 'stop system\nlock-out power\nrestore power', false],
  ['a lock-out that its charge was recovered in', 'lock-out power\nrecover system to 4 inHg\nrestore power', false],
  ['a second lock-out on top of the first', 'lock-out power\nlock-out power\nrestore power', true],
])('after %s and the power back', (_, steps, running) => {
  expect(after(ring('kept'), steps).running).toBe(running);
});

// A branch box is the fitting that its tubes meet in: with it off, none of them is joined to another.
it('a branch box that comes off leaves each tube to be joined again', () => {
  const rooms =
    'compressor kept\nmain: liquid-line kept\nbox: branch-box new\nparallel {\nbranch a {\none: evaporator kept\n}\nbranch b {\ntwo: evaporator kept\n}\n}\nthrough box\nback: suction-line kept';
  const steps =
    'remove box\nplace box\nconnect main at far end\nconnect one, two at near end\nconnect back at near end';
  const open = (plant: Plant): number => spaces(plant).filter((space) => space.openings.length > 0).length;
  expect(open(after(rooms, steps))).toBeGreaterThan(0);
  expect(open(after(rooms, `${steps}\nconnect one at far end`))).toBeGreaterThan(0);
  expect(open(after(rooms, `${steps}\nconnect one, two at far end`))).toBe(0);
});
