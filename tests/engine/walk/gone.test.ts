import { describe, expect, it } from 'vitest';
import { spaces } from '../../../server/engine/circuit/spaces';
import { Workspace } from '../../../server/engine/workspace';

/** The circuit of a small plan after its steps: how many spaces there are, and how many of them are open to the air. */
function after(parts: string, steps: string): { spaces: number; open: number } {
  const workspace = new Workspace();
  workspace.setFile(
    'a.jobplan',
    `plan a {\nkind repair\nsystem {\nrefrigerant R-134a\n}\ncircuit {\n${parts}\n}\nsteps {\n${steps}\n}\n}\n`,
  );
  const plant = workspace.snapshot().plans('a.jobplan')[0]!.walk.entries.at(-1)!.after;
  return { spaces: spaces(plant).length, open: spaces(plant).filter((space) => space.openings.length > 0).length };
}

const circuit = (standing: string) => `compressor kept\ncondenser kept\nx: accumulator ${standing}\nsuction-line kept`;

// By the meaning of the words: `removed` was there and does not come back, `added` was not there before.
describe('a part that does not come back', () => {
  it.each([
    ['leaves a gap while it is out', 'removed', 'remove x', { spaces: 1, open: 1 }],
    [
      'is bridged once its neighbours are made up',
      'removed',
      'remove x\nconnect suction-line at both ends',
      { spaces: 1, open: 0 },
    ],
    [
      'is bridged from the other side, too',
      'removed',
      'remove x\nconnect condenser at both ends',
      { spaces: 1, open: 0 },
    ],
    [
      'is bridged where it was only there for the job',
      'added',
      'install x\ncut-out x\nconnect condenser',
      { spaces: 1, open: 0 },
    ],
    [
      'is not bridged where a new one is to come',
      'new',
      'remove x\nconnect suction-line at both ends',
      { spaces: 1, open: 1 },
    ],
  ])('%s', (_, standing, steps, expected) => {
    expect(after(circuit(standing), steps)).toEqual(expected);
  });
});
