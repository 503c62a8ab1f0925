import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';
import { foundIn, type Swap } from './edited';

/** What a sound plan may say in another way than the samples do, and what beside it is still told. */
const names = (plan: string, ...swaps: readonly Swap[]): readonly string[] =>
  foundIn(`${plan}.jobplan`, swaps).map(({ name }) => name);

// Liquid carbon dioxide turns to dry ice below 5.18 bar absolute: vapour first (handbook 8.1, 13.6).
describe('a vacuum broken with vapour of carbon dioxide', () => {
  const broken = (to: string): Swap => [
    'charge case-piping with R-744 as vapour {\n      note "To 100 psig with vapour from the tank before any liquid"\n    }',
    `break-vacuum case-piping with ${to}`,
  ];
  it('may stand as high as a test', () => {
    expect(names('carbon-dioxide-case', broken('refrigerant to 145 psig'))).toEqual([]);
  });
  it('is no leave for nitrogen', () => {
    expect(names('carbon-dioxide-case', broken('nitrogen to 145 psig'))).toContain('vacuum-broken-too-high');
  });
});

// 40 CFR 82.154(a)(1): isobutane is exempt in the uses for which it is listed (handbook 2.2, from memory).
describe('the isobutane of a sealed cabinet', () => {
  const instead = (step: string): Swap => [
    'recover system to 4 inHg {\n      caution "Isobutane burns: outdoors, no sparks, detector on all the time"\n    }',
    step,
  ];
  // What stays in is drawn out before a torch comes.
  const swept: Swap = [
    'break-vacuum system with nitrogen to 0 psig\n',
    'evacuate system to 5000 micron\n    break-vacuum system with nitrogen to 0 psig\n',
  ];
  it('may be let off outdoors', () => {
    expect(names('isobutane-cabinet', instead('release system to 0 psig outdoors'), swept)).toEqual([]);
  });
  it('is led outdoors', () => {
    expect(names('isobutane-cabinet', instead('release system to 0 psig'), swept)).toEqual(['refrigerant-vented']);
  });
  it('is let off where nothing lights it', () => {
    const unlooked: Swap = ['    check ignition-sources within 10 ft\n', ''];
    expect(names('isobutane-cabinet', instead('release system to 0 psig outdoors'), swept, unlooked)).toContain(
      'ignition-sources-unchecked',
    );
  });
  it('of a machine that is none, it is recovered', () => {
    const large: Swap = ['small-appliance runs', 'equipment cold-storage'];
    expect(names('isobutane-cabinet', instead('release system to 0 psig outdoors'), swept, large)).toContain(
      'refrigerant-vented',
    );
  });
  it('is drawn out before a torch comes', () => {
    const dry: Swap = ['    blow-out condenser at 60 psig for 30 s outdoors\n', ''];
    expect(names('isobutane-cabinet', instead('release system to 0 psig outdoors'), dry)).toEqual(['torch-hazard']);
  });
});

// Water is shut off and drained before refrigerant boils off in an exchanger (handbook 13.6, freezing); pumps of the building
// have power of their own: common practice, no source.
describe('the water side of an exchanger', () => {
  const plan = 'plate-exchanger-renewed';
  const before = '    recover system to 0 inHg\n';
  it.each(['drain plates at bottom', 'drain plates at water-side', 'drain plates'])('%s', (step) => {
    expect(
      names(
        plan,
        [before, `    close water-valves\n    ${step}\n${before}`],
        ['    check water-flow\n', '    open water-valves\n'],
      ),
    ).toEqual([]);
  });
  it('is no leave to drain refrigerant', () => {
    expect(names(plan, [before, `    drain condenser at bottom\n${before}`])).toContain('open-under-pressure');
  });
  it.each(['prove-airflow plates', 'prove-airflow water'])('%s without power on the machine', (step) => {
    expect(names(plan, ['    check water-flow\n', `    ${step}\n`])).toEqual([]);
  });
  it('is no leave for fans', () => {
    expect(names(plan, ['    check water-flow\n', '    prove-airflow system\n'])).toContain('airflow-not-proved');
  });
});

// What stands in a recovery cylinder is told on it (49 CFR 172.301, from memory); a shop calls it by its name.
describe('a recovery cylinder', () => {
  const label = (what: string): Swap => ['    break-vacuum system', `    label ${what}\n    break-vacuum system`];
  it('is labelled by its name', () => {
    expect(names('double-riser-flushed', label('old-gas'))).toEqual([]);
  });
  it('has no other name', () => {
    expect(names('double-riser-flushed', label('odd-gas'))).toContain('unknown-name');
  });
});

// A motor valve stays where it was last driven, and its maker sends it shut (design of the language; makers' sheets, from memory).
describe('a motor valve that is changed', () => {
  const changed: Swap = [
    '    cut-out drier-6, eev-6\n    place eev-6\n    wrap eev-6\n    connect eev-6 at both ends with nitrogen at 5 cfh\n',
    '    cut-out drier-6\n    wrap eev-6\n    change eev-6 with nitrogen at 5 cfh\n',
  ];
  it('is opened for the test', () => {
    expect(names('carbon-dioxide-case', changed)).toEqual([]);
  });
  it('is found shut where nobody opens it', () => {
    const shut: Swap = [
      '    unwrap eev-6\n    open eev-6 by service-tool\n    pressure-test',
      '    unwrap eev-6\n    pressure-test',
    ];
    expect(names('carbon-dioxide-case', changed, shut)).toContain('section-not-evacuated');
  });
});

// A section at the pressure of the air is swept with nitrogen before the torch (handbook 13.1).
describe('nitrogen into a section that stands at no pressure', () => {
  const swept = (what: string, before: string): Swap => [
    before,
    `    break-vacuum ${what} with nitrogen to 0 psig\n${before}`,
  ];
  it('sweeps it, whatever the receiver holds', () => {
    const plan = 'walk-in-expansion-valve';
    expect(names(plan, swept('evaporator', '    remove expansion-valve, filter-drier\n'))).toEqual([]);
  });
  it('does not go into the charge', () => {
    const plan = 'walk-in-expansion-valve';
    expect(names(plan, swept('receiver', '    remove expansion-valve, filter-drier\n'))).toContain(
      'nitrogen-on-charge',
    );
  });
});

// Zero is proved once after a recovery (40 CFR 82.156, handbook 2.1): a new part brings no refrigerant to prove anew.
describe('a drier fitted last, with the stops of a new compressor open again', () => {
  const last: readonly Swap[] = [
    ['filter-drier kept', 'filter-drier new'],
    [
      '    close suction-stop, discharge-stop\n',
      '    recover system to 10 inHg\n    prove-zero system\n    break-vacuum system with nitrogen to 0 psig\n    close suction-stop, discharge-stop\n',
    ],
    ['    recover compressor to 0 inHg\n    prove-zero compressor\n', ''],
    [
      'with new-gaskets\n',
      'with new-gaskets\n    open suction-stop, discharge-stop\n    install filter-drier with torque-wrench\n',
    ],
  ];
  it('keeps the proof', () => {
    expect(names('compressor-between-valves', ...last)).not.toContain('not-proved-zero');
  });
  it('has none where nobody waited', () => {
    expect(names('compressor-between-valves', ...last, ['    prove-zero system\n', ''])).toContain('not-proved-zero');
  });
  it('has none where the machine was emptied again', () => {
    const again: Swap = [
      '    install filter-drier',
      '    charge system with R-449A 5 lb as vapour\n    recover system to 10 inHg\n    install filter-drier',
    ];
    expect(names('compressor-between-valves', ...last, again)).toContain('not-proved-zero');
  });
});

// 29 CFR 1910.147: what could start at the place of the work is locked out.
describe('the only machine locked out by its name', () => {
  const plan = `kind repair
site {
  altitude 0 ft
  outdoors 50 degF
  work-space machine-room 9000 ft3, ventilation 900 cfm
}
system {
  refrigerant R-448A
  oil POE
  equipment supermarket
  charge 300 lb
  design-pressure low 250 psig, high 400 psig
}
circuit {
  machine: compressor kept
  condenser kept
  liquid-line kept
  expansion-valve kept
  evaporator kept
  inlet: ball-valve kept
  port: access-valve kept
  shell: filter-drier kept
  outlet: ball-valve kept
}`;
  const steps = (part: string, valves: string, locked: string): string => `survey system
stop system
lock-out ${locked}
close ${valves}
recover ${part} to 10 inHg
prove-zero ${part}
break-vacuum ${part} with nitrogen to 0 psig
replace-cores shell
restore power
record quantities, readings`;
  const found = (locked: string): readonly string[] => {
    const workspace = new Workspace();
    workspace.setFile(
      'shell.jobplan',
      exampleText({ base: 'rack', plan, steps: steps('shell', 'inlet, outlet', locked) }),
    );
    return workspace
      .snapshot()
      .findings('shell.jobplan')
      .map(({ name }) => name);
  };
  it.each(['power', 'machine', 'shell'])('%s', (locked) => {
    expect(found(locked)).not.toContain('work-without-lock-out');
  });
  it('is none that stands elsewhere', () => {
    expect(found('condenser')).toContain('work-without-lock-out');
  });
  it('leaves the fans of a coil their power', () => {
    const own: Swap = ['lock-out power', 'lock-out compressor'];
    const back: Swap = ['restore power', 'restore compressor'];
    expect(names('walk-in-expansion-valve', own, back)).toContain('work-without-lock-out');
  });
});

// A burnout is mended by a repair: common practice, no source.
describe('a standard for a burnout', () => {
  it('serves a repair of one', () => {
    expect(names('burnout-by-standard', ['kind burnout', 'kind repair, burnout'])).toEqual([]);
  });
  it('serves no other repair', () => {
    expect(names('burnout-by-standard', ['kind burnout', 'kind repair'])).toContain('standard-not-for-kind');
  });
  it('serves no changeout', () => {
    expect(names('burnout-by-standard', ['kind burnout', 'kind burnout, changeout'])).toContain(
      'standard-not-for-kind',
    );
  });
});
