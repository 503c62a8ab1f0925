import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import type { Example } from '../../../server/engine/checks/define';
import { Workspace } from '../../../server/engine/workspace';

/** Names of what is found above information in one of the checks' plans, put differently. */
function found(example: Example): readonly string[] {
  const workspace = new Workspace();
  workspace.setFile('other.jobplan', exampleText(example));
  return workspace
    .snapshot()
    .findings('other.jobplan')
    .filter(({ severity }) => severity !== 'information')
    .map(({ name }) => name);
}

const flared = (part: string, standing: string): Example => ({
  base: 'ductless',
  instead: [
    [
      'liquid: liquid-line kept {',
      `valve: ${part} ${standing} {\n      joint flare\n    }\n    liquid: liquid-line kept {`,
    ],
  ],
});

// Ways of working that differ from the usual and are as good; each beside a twin that is not.
describe('a sound way, and the twin that is told', () => {
  it.each([
    [
      'a machined seat is not flared anew, tube is (handbook 10.3)',
      flared('sight-glass', 'kept'),
      { base: 'ductless', instead: [['flare each kept line at both ends\n', '']] },
      'old-flare-reused',
    ],
    [
      'a repair does not judge the tube as it was sold; a wall that was measured it does (handbook 10.3)',
      {
        base: 'split',
        plan: 'kind repair',
        instead: [
          ['R-22 -> R-454B', 'R-454B'],
          ['tube 7/8 in ACR', 'tube 1-3/8 in ACR'],
          ['suction-line kept', 'vapour-line kept'],
          ['evaporator new', 'evaporator kept'],
          ['condenser new {\n      holds R-454B 6 lb\n      valves closed\n    }', 'condenser kept'],
        ],
      },
      {
        base: 'split',
        plan: 'kind repair',
        instead: [
          ['R-22 -> R-454B', 'R-454B'],
          ['tube 7/8 in ACR', 'tube 1-3/8 in ACR\n      wall 0.03 in measured'],
          ['suction-line kept', 'vapour-line kept'],
          ['evaporator new', 'evaporator kept'],
          ['condenser new {\n      holds R-454B 6 lb\n      valves closed\n    }', 'condenser kept'],
        ],
      },
      'tube-not-rated',
    ],
    [
      'outdoor air does not reach a condenser that water cools (handbook 9.2)',
      {
        base: 'split',
        instead: [
          ['outdoors 80 degF', 'outdoors 45 degF'],
          ['holds R-454B 6 lb', 'holds R-454B 6 lb\n      water-flow 9 gpm'],
        ],
      },
      { base: 'split', instead: [['outdoors 80 degF', 'outdoors 45 degF']] },
      'adjusted-in-cold',
    ],
    [
      'a coil has no low spots to look for (handbook 5.1)',
      {
        base: 'split',
        instead: [['blow-out each kept line', 'back-flush evaporator into container\n  blow-out each kept line']],
      },
      { base: 'split', instead: [['inspect each kept line for low-spots, traps, kinks, wall\n', '']] },
      'flush-uninspected',
    ],
  ] as const)('%s', (_, sound, twin, name) => {
    expect(found(sound)).not.toContain(name);
    expect(found(twin)).toContain(name);
  });
});
