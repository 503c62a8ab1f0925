import { describe, expect, it } from 'vitest';
import { holding, lastEvent, named, walked } from './small';

/** A drier with a ball valve on either side: it is changed without opening the rest. */
const circuit = `compressor kept
condenser kept
in: ball-valve kept
filter-drier new
out: ball-valve kept
expansion-valve kept
evaporator kept
suction-line kept`;

/** The drier is changed between its valves: the only space that is opened. Its outlet valve's body hangs with it (README of the states). */
const drierChanged = [
  'lock-out power',
  'close in, out',
  'recover filter-drier to 0 inHg',
  'prove-zero filter-drier',
  'cut-out filter-drier',
  'install filter-drier with nitrogen at 5 cfh',
];
const section = ['filter-drier+out'];

// Semantics: "each space that has been open since its last test at the pressure asked, and is closed now". Where all are
// proved, whoever reads the line puts gas or pump on what was opened once more.
describe('"each open part" of a test and a pump', () => {
  it.each([
    ['a test of what was opened', [], 'pressure-test each open part to 150 psig for 15 min', section],
    [
      'a second test as high: all is proved, what was opened is meant once more',
      ['pressure-test filter-drier to 150 psig for 15 min'],
      'pressure-test each open part to 150 psig for 15 min',
      section,
    ],
    [
      'a higher test after a first stage: it is not proved at that pressure yet',
      ['pressure-test filter-drier to 10 psig for 15 min'],
      'pressure-test each open part to 150 psig for 15 min',
      section,
    ],
  ])('%s', (_, steps, last, expected) => {
    const entries = walked(circuit, [...drierChanged, ...steps, last]);
    const { before, events } = entries.at(-1)!;
    expect(named(before, lastEvent(entries, 'pressurises')!.spaces)).toEqual(expected);
    expect(events.map(({ type }) => type)).not.toContain('no-effect');
  });

  it('a pump after the decay test means what was opened, not the rest with its charge', () => {
    const entries = walked(circuit, [
      ...drierChanged,
      'evacuate filter-drier to 500 micron',
      'decay-test filter-drier for 15 min, rise at most 300 micron',
      'break-vacuum filter-drier with nitrogen to 2 psig',
      'evacuate each open part to 400 micron',
    ]);
    const { before, after } = entries.at(-1)!;
    expect(named(before, lastEvent(entries, 'evacuates')!.spaces)).toEqual(section);
    expect(after.parts[0]!.contents[0]!.gas).toBe('refrigerant');
    expect(after.parts[3]!.contents[0]!.gas).toBe('vacuum');
  });

  it('of two spaces, of which one is proved, only the other is meant', () => {
    const both = [
      ...drierChanged,
      'recover suction-line to 0 inHg',
      'prove-zero suction-line',
      'disconnect suction-line at both ends',
      'connect suction-line at both ends',
      'pressure-test filter-drier to 150 psig for 15 min',
    ];
    const entries = walked(circuit, [...both, 'pressure-test each open part to 150 psig for 15 min']);
    const spaces = named(entries.at(-1)!.before, lastEvent(entries, 'pressurises')!.spaces);
    expect(spaces.length).toBeGreaterThan(0);
    expect(spaces).not.toContain(section[0]);
    expect(spaces.join('+')).toContain('suction-line');
  });

  it('where nothing was opened, a test means nothing and has no effect', () => {
    const entries = walked(circuit, ['lock-out power', 'pressure-test each open part to 150 psig for 15 min']);
    expect(lastEvent(entries, 'pressurises')!.spaces).toEqual([]);
    expect(lastEvent(entries, 'no-effect')).toBeDefined();
  });
});

/** A new unit that comes with its charge behind its own valves, on lines that stay. */
const unit = `compressor new
condenser new {
holds R-134a 4 lb
valves closed
}
liquid-line kept
expansion-valve kept
evaporator kept
suction-line kept`;

const unitSet = [
  'lock-out power',
  'recover system to 0 inHg',
  'prove-zero system',
  'disconnect liquid-line at near end',
  'disconnect suction-line at far end',
  'remove compressor, condenser',
  'place compressor, condenser',
  'connect liquid-line at near end',
  'connect suction-line at far end',
];

// Semantics: a new unit's own charge behind its shut valves is left alone; whoever names nothing else puts gas or pump on it.
describe("a test or a pump and a new unit's own charge", () => {
  const lines = 'liquid-line+expansion-valve+evaporator+suction-line';
  it.each([
    ['the system leaves the unit alone', 'evacuate system to 500 micron', 'evacuates', lines],
    ['each open part leaves it alone', 'evacuate each open part to 500 micron', 'evacuates', lines],
    ['a list with lines in it means the lines', 'evacuate condenser, liquid-line to 500 micron', 'evacuates', lines],
    [
      'the unit alone is meant as it stands there',
      'evacuate condenser to 500 micron',
      'evacuates',
      'compressor+condenser',
    ],
    [
      'a test of the unit alone as well',
      'pressure-test condenser to 150 psig for 15 min',
      'pressurises',
      'compressor+condenser',
    ],
    ['a test of the system leaves it alone', 'pressure-test system to 150 psig for 15 min', 'pressurises', lines],
  ] as const)('%s', (_, step, type, expected) => {
    const entries = walked(unit, [...unitSet, step]);
    const { before, after } = entries.at(-1)!;
    expect(named(before, lastEvent(entries, type)!.spaces)).toEqual([expected]);
    expect(lastEvent(entries, 'no-effect')).toBeUndefined();
    // Whatever the step says, the charge stays what it was: the checks tell the step.
    for (const index of [0, 1]) expect(after.parts[index]).toMatchObject({ ownCharge: true });
    expect(holding(after, 'refrigerant')).toEqual(['compressor', 'condenser']);
  });
});

// The same words twice do nothing the second time; what cannot be done is grave (checks.md: a step with no effect).
describe('a valve opened, a flare made, for nothing', () => {
  const solenoid = `compressor kept
condenser kept
valve: service-valve kept
sol: solenoid kept
eev: electronic-expansion-valve kept
x: ball-valve new
evaporator kept
suction-line kept {
joint flare
}`;
  it.each([
    ['a valve that stands open', ['open valve'], { type: 'no-effect' }],
    ['a valve that was shut before', ['close valve', 'open valve'], null],
    ['a solenoid with the power locked out, by nothing', ['lock-out power', 'open sol'], { type: 'lacks-power' }],
    ['the same by magnet', ['lock-out power', 'open sol by magnet'], null],
    ['the same by magnet twice', ['lock-out power', 'open sol by magnet', 'open sol by magnet'], { type: 'no-effect' }],
    ['a motor valve without power', ['lock-out power', 'open eev'], { type: 'lacks-power' }],
    [
      'a valve that is off',
      ['lock-out power', 'recover system to 0 inHg', 'prove-zero system', 'cut-out x', 'open x'],
      { type: 'no-effect', grave: true },
    ],
    [
      'flares on joints that are made, before anything is opened',
      ['flare suction-line at both ends'],
      { type: 'no-effect' },
    ],
    [
      'flares on joints that were opened and are made again',
      [
        'lock-out power',
        'recover system to 0 inHg',
        'disconnect suction-line at both ends',
        'connect suction-line at both ends with torque-wrench',
        'flare suction-line at both ends',
      ],
      { type: 'no-effect', grave: true },
    ],
    [
      'flares while the joints are undone',
      [
        'lock-out power',
        'recover system to 0 inHg',
        'disconnect suction-line at both ends',
        'flare suction-line at both ends',
      ],
      null,
    ],
  ] as const)('%s', (_, steps, expected) => {
    const entries = walked(solenoid, steps);
    const event = lastEvent(entries, 'no-effect') ?? lastEvent(entries, 'lacks-power');
    if (expected === null) expect(event).toBeUndefined();
    else {
      expect(event).toMatchObject(expected);
      expect('grave' in event!).toBe('grave' in expected);
    }
  });
});

/** Nothing stood between the line and the coil before: what is added there is cut in. */
const addedIn = `compressor kept
condenser kept
stop: ball-valve kept
liquid-line kept
x: sight-glass added
shut: ball-valve kept
expansion-valve kept
evaporator kept
suction-line kept`;

// Semantics: `added` means that nothing stood there before, so its neighbours are joined until the tube is cut for it.
describe('a part that is added where tubes are joined', () => {
  it('opens what it is cut into, which was proved before, and not what is shut off', () => {
    const entries = walked(addedIn, [
      'lock-out power',
      'close stop, shut',
      'recover liquid-line to 0 inHg',
      'prove-zero liquid-line',
      'pressure-test liquid-line to 150 psig for 15 min',
      'release nitrogen outdoors',
      'install x with nitrogen at 5 cfh',
    ]);
    const { before, after } = entries.at(-1)!;
    const opened = lastEvent(entries, 'opens')!;
    expect(named(before, [opened.space])[0]).toContain('liquid-line');
    const untested = after.graph.parts.filter(({ index }) => after.parts[index]!.opened && !after.parts[index]!.tested);
    expect(untested.map(({ name }) => name)).toEqual(['liquid-line', 'x', 'shut']);
    expect(after.parts[3]!.contents[0]!.gas).toBe('air');
    expect(holding(after, 'refrigerant')).toEqual([
      'compressor',
      'condenser',
      'stop',
      'expansion-valve',
      'evaporator',
      'suction-line',
    ]);
  });

  it.each([
    ['where the joint was undone before', ['disconnect liquid-line at far end', 'install x'], false],
    ['where the tube is whole', ['install x'], true],
    ['a piercing valve, which is clamped on', ['install tap'], false],
  ])('%s', (_, steps, expected) => {
    const parts = addedIn.replace('evaporator kept', 'evaporator kept\ntap: piercing-valve added');
    const entries = walked(parts, ['lock-out power', 'recover system to 0 inHg', 'prove-zero system', ...steps]);
    expect(lastEvent(entries, 'opens') !== undefined).toBe(expected);
  });
});
