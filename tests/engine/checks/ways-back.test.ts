import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

type Instead = readonly (readonly [string, string])[];

/** Findings of the split plan's usual order with labels and ways back put in; the rules are those of the first time round. */
const findings = (...instead: Instead): readonly string[] => findingsIn('split', instead);

function findingsIn(base: 'split' | 'rack', instead: Instead): readonly string[] {
  const workspace = new Workspace();
  workspace.setFile('back.jobplan', exampleText({ base, instead }));
  return workspace
    .snapshot()
    .findings('back.jobplan')
    .filter((finding) => finding.severity !== 'information')
    .map((finding) => `${finding.name}: ${finding.message}`);
}

const closeUp = ['  connect each kept', '  close-up: connect each kept'] as const;
const flushes = ['  crimp each kept', '  clean: crimp each kept'] as const;
const evacuates = ['  evacuate each', '  evacuate: evacuate each'] as const;
const test = 'pressure-test each open part to 450 psig for 30 min';
const decay = 'decay-test each open part for 15 min, rise at most 300 micron';
const back = (step: string, label: string) =>
  [step, `${step} {\n    if-fails back to ${label}, at most 2 times\n  }`] as const;

describe('a way back that suits', () => {
  it.each([
    ['the joint is remade once the nitrogen is let down', [closeUp, back(test, 'close-up')]],
    ['the pump is put on again after the vacuum is broken', [evacuates, back(decay, 'evacuate')]],
    ['the vacuum is broken before a joint is remade', [closeUp, back(decay, 'close-up')]],
    ['two ways one after the other, over each other', [closeUp, back(test, 'close-up'), back(decay, 'close-up')]],
    [
      'a round of a repeat begins again',
      [
        ['  flush each kept line into', '  wash: flush each kept line into'],
        [
          '  purge each kept line at 50 psig for 15 s into container\n',
          '  purge each kept line at 50 psig for 15 s into container\n    inspect each kept line for clean-cloth {\n      if-fails back to wash, at most 2 times\n    }\n',
        ],
      ],
    ],
    [
      'the rounds are gone through once more after a look at the cloth',
      [
        ['  repeat until clear', '  rounds: repeat until clear'],
        ['  trim each', '  hold "Clean cloth" by lead {\n    if-fails back to rounds\n  }\n  trim each'],
      ],
    ],
    [
      'a phase goes back to its own beginning',
      [
        [
          '  evacuate each',
          '  pump: phase "Pump and prove" {\n    if-fails back to pump, at most 2 times\n  evacuate each',
        ],
        [decay, `${decay}\n  }`],
      ],
    ],
    [
      'the trimming of the charge is done again',
      [
        ['  adjust charge', '  trim-charge: adjust charge'],
        [
          '  label system',
          '  read subcooling of condenser {\n    if-fails back to trim-charge, at most 3 times\n  }\n  label system',
        ],
      ],
    ],
  ] as const)('%s', (_, instead) => {
    expect(findings(...instead)).toEqual([]);
  });
});

describe('a way back that does not suit', () => {
  it.each([
    [
      'the lines are flushed with both ends made up',
      [flushes, back(test, 'clean')],
      /^way-back-unsafe: .*(blow-out|flush) each kept line/,
    ],
    [
      'the pump is put on refrigerant that was let in',
      [
        evacuates,
        ['charge system\n', 'charge system\n  read pressure of system {\n    if-fails back to evacuate\n  }\n'],
      ],
      /^way-back-unsafe: .*evacuate each open part.* still hold/,
    ],
    [
      'a torch comes to refrigerant that was let in',
      [
        closeUp,
        ['charge system\n', 'charge system\n  read pressure of system {\n    if-fails back to close-up\n  }\n'],
      ],
      /^way-back-unsafe: .*torch/,
    ],
    [
      'the vacuum was broken, and is looked at again without the pump',
      [
        ['  decay-test each', '  prove: decay-test each'],
        [decay, `${decay} {\n    if-fails back to prove\n  }`],
      ],
      /^way-back-unsafe: .*decay-test each open part.* in nitrogen .*pulls them down again/,
    ],
    [
      'a phase that goes back to a step behind the pump',
      [
        ['  decay-test each', '  proof: phase "Proof" {\n    if-fails back to proof\n  photo gauge\n  decay-test each'],
        [decay, `${decay}\n  }`],
      ],
      /^way-back-unsafe: .*decay-test each open part.* in nitrogen /,
    ],
    [
      'the charge goes in a second time',
      [
        ['  charge system\n', '  weigh-in: charge system\n'],
        ['  label system', '  read subcooling of condenser {\n    if-fails back to weigh-in\n  }\n  label system'],
      ],
      /^way-back-unsafe: .*weighs the charge in a second time/,
    ],
    [
      'a joint is taken in hand under the gas of a test that is not let down',
      [
        [
          '  connect each kept line at both ends with nitrogen at 5 cfh',
          '  close-up: connect each kept line at both ends',
        ],
        ['    joint brazed', '    joint flanged'],
        ['    joint brazed', '    joint flanged'],
        ['  release nitrogen', '  leak-check system {\n    if-fails back to close-up\n  }\n  release nitrogen'],
      ],
      /^way-back-unsafe: .*remade while .* holds nitrogen at up to 450 psig/,
    ],
    [
      'a torch comes to the gas of a test that is not let down',
      [
        closeUp,
        ['  release nitrogen', '  leak-check system {\n    if-fails back to close-up\n  }\n  release nitrogen'],
      ],
      /^way-back-unsafe: .*torch/,
    ],
    [
      'the valves of the new unit are open by then',
      [
        evacuates,
        ['  charge system\n', '  leak-check system {\n    if-fails back to evacuate\n  }\n  charge system\n'],
      ],
      /^way-back-unsafe: .*evacuate each open part.* still hold/,
    ],
    [
      'a joint is brazed with the power back on',
      [closeUp, ['start system', 'read pressure of system {\n    if-fails back to close-up\n  }\n  start system']],
      /^way-back-unsafe: /,
    ],
  ] as const)('%s', (_, instead, expected) => {
    const found = findings(...instead);
    expect(found).toEqual([expect.stringMatching(expected)]);
  });
});

const highTest = 'pressure-test high-side to 350 psig for 60 min';
const rackDecay = 'decay-test system for 30 min, rise at most 200 micron';

describe('in a rack, what another test put in is still there', () => {
  it('is silent where the joint that is remade stands on the side that was let down', () => {
    const instead: Instead = [
      ['  install liquid-drier', '  drier: connect liquid-drier'],
      ['connect liquid-drier', 'install liquid-drier'],
      [highTest, `${highTest} {\n      if-fails back to high-test\n    }`],
      [highTest, `high-test: ${highTest}`],
    ];
    expect(findingsIn('rack', instead)).toEqual([]);
  });

  it('finds that the low side is opened under the pressure of its own test', () => {
    const instead: Instead = [
      ['  change txv-1', '  valves: change txv-1'],
      [highTest, `${highTest} {\n      if-fails back to valves\n    }`],
    ];
    expect(findingsIn('rack', instead)).toEqual([
      expect.stringMatching(/^way-back-unsafe: .*opens .* nitrogen at up to 200 psig/),
    ]);
  });

  it('is silent where all of it is let down first', () => {
    const instead: Instead = [
      ['  change txv-1', '  valves: change txv-1'],
      [
        highTest,
        `${highTest}\n    release nitrogen outdoors\n    leak-check high-side {\n      if-fails back to valves\n    }`,
      ],
      ['    release nitrogen outdoors\n    open valve-s', '    open valve-s'],
    ];
    expect(findingsIn('rack', instead)).toEqual([]);
  });

  it('is silent over two ways, one behind the other', () => {
    const instead: Instead = [
      ['  open valve-s', '  shut-off: open valve-s'],
      [
        rackDecay,
        `${rackDecay} {\n      if-fails back to shut-off\n    }\n    read level of system {\n      if-fails back to look\n    }`,
      ],
      ['    read level', '    look: photo gauge\n    read level'],
    ];
    expect(findingsIn('rack', instead)).toEqual([]);
  });
});
