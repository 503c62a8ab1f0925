import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

const one = 'comp: compressor kept {\n      oil 140 fl-oz\n    }';
const two = `parallel {
    branch left {
      comp: compressor kept {
        oil 140 fl-oz
      }
    }
    branch right {
      comp-b: compressor kept {
        oil 140 fl-oz
      }
    }
  }`;

/** What is found of a pump-down by two compressors side by side, after `first`. */
function found(first: string): readonly string[] {
  const workspace = new Workspace();
  const text = exampleText({
    base: 'rack',
    instead: [
      [one, two],
      ['lock-out power\n', `${first}pump-down system into receiver to 0 psig\n    lock-out power\n`],
    ],
  });
  workspace.setFile('two.jobplan', text);
  return workspace
    .snapshot()
    .findings('two.jobplan')
    .map(({ name }) => name);
}

// A compressor's own valves let no gas back from its discharge (common practice, no source): its neighbour is no way round.
it('gathers the charge behind the shut solenoids, whichever compressor runs', () => {
  expect(found('close sol-1, sol-2\n    ')).not.toContain('pump-down-in-vain');
});

it('gathers nothing while the liquid side is open', () => {
  expect(found('')).toContain('pump-down-in-vain');
});
