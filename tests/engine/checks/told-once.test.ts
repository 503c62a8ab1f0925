import { expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

/** A mistake made in a sound plan by a few edits, and all that is said above information: one cause, one finding. */
type Mistake = readonly [what: string, path: string, edits: readonly Swap[], found: readonly string[]];

const found = (path: string, edits: Mistake[2]): readonly string[] =>
  foundIn(path, edits).map(({ name, at }) => `${name} at ${'word' in at.item ? at.item.word?.text : ''}`);

const conversion = 'medium-pressure-conversion.jobplan';

// A drier's core is chosen for refrigerant and oil, and a conversion renews it (handbook 13.3).
const driers: readonly Mistake[] = [
  [
    'an old drier that another refrigerant goes in on',
    conversion,
    [
      ['filter-drier new', 'filter-drier kept'],
      ['    cut-out filter-drier\n', ''],
      ['    install filter-drier with nitrogen at 4 cfh\n', ''],
    ],
    ['drier-not-renewed at filter-drier'],
  ],
  [
    'a new drier that no step fits is told as that alone',
    conversion,
    [
      ['    cut-out filter-drier\n', ''],
      ['    install filter-drier with nitrogen at 4 cfh\n', ''],
    ],
    ['part-not-as-stated at filter-drier'],
  ],
  // The new drier goes in last (handbook 13.1).
  [
    'a new drier behind which a line is cut',
    'liquid-line-leak.jobplan',
    [
      ['    install filter-drier with nitrogen at 3 cfh\n', ''],
      ['    disconnect liquid', '    install filter-drier with nitrogen at 3 cfh\n    disconnect liquid'],
    ],
    ['drier-open-long at install'],
  ],
  [
    'two new driers behind which the lines are brazed in',
    'rack-conversion.jobplan',
    [
      ['      driers: install suction-drier, liquid-drier with nitrogen at 8 cfh\n', ''],
      [
        '      place comp-b, accumulator\n',
        '      place comp-b, accumulator\n      install suction-drier, liquid-drier with nitrogen at 8 cfh\n',
      ],
    ],
    ['drier-open-long at install'],
  ],
];

const statements: readonly Mistake[] = [
  [
    'a kept valve that is taken off and set again, with nothing done to it',
    'one-case-rack-runs-on.jobplan',
    [['four-valve: expansion-valve new', 'four-valve: expansion-valve kept']],
    ['part-not-as-stated at expansion-valve'],
  ],
  [
    'a kept sight glass that is cut out and set again',
    'mineral-oil-stays.jobplan',
    [['sight-glass new', 'sight-glass kept']],
    ['part-not-as-stated at sight-glass'],
  ],
  ['one that is stated reused', 'mineral-oil-stays.jobplan', [['sight-glass new', 'sight-glass reused']], []],
  [
    'a core for moisture after a burnout',
    'reach-in-burnout.jobplan',
    [['      core acid', '      core moisture']],
    ['core-not-for-acid at core'],
  ],
];

// Each valve that stays in a conversion is set anew (handbook 13.3); what is new is adjusted, what was not touched is not.
const valves: readonly Mistake[] = [
  [
    'the superheat of the kept valve is never set, though it was read before',
    'trailer-unit-converted.jobplan',
    [['    adjust superheat of expansion-valve after 20 min\n', '']],
    ['conversion-not-carried-through at expansion-valve'],
  ],
  [
    'the one of three valves that is kept is left out',
    'rack-conversion.jobplan',
    [
      ['txv-1: expansion-valve new', 'txv-1: expansion-valve kept'],
      ['change txv-1, txv-2, txv-3', 'change txv-2, txv-3'],
      ['adjust superheat of txv-1, txv-2, txv-3', 'adjust superheat of txv-2, txv-3'],
    ],
    ['conversion-not-carried-through at expansion-valve'],
  ],
  [
    'the valve of another case is adjusted',
    'one-case-rack-runs-on.jobplan',
    [['adjust superheat of four-valve', 'adjust superheat of five-valve']],
    ['valve-not-adjusted at adjust'],
  ],
  // By the property tables at 40 and 105 °F, R-407C passes an orifice 1.17 times as easily as R-22, beside what the compressor pumps.
  [
    'an orifice that trims with the charge',
    'fixed-orifice-conversion.jobplan',
    [
      ['fixed-orifice new', 'fixed-orifice kept'],
      ['    change fixed-orifice\n', ''],
    ],
    [],
  ],
];

const heads: readonly Mistake[] = [
  [
    'another refrigerant after the work, and no step that changes it',
    'drier-changed.jobplan',
    [
      ['refrigerant R-134a', 'refrigerant R-134a -> R-513A'],
      ['kind repair', 'kind conversion'],
    ],
    ['refrigerant-never-changed at refrigerant'],
  ],
  [
    'a head that every step contradicts is told at the head',
    conversion,
    [['refrigerant R-134a -> R-513A', 'refrigerant R-134a']],
    ['other-refrigerant at refrigerant'],
  ],
  [
    'and what else the wrong refrigerant would bring is not told',
    conversion,
    [['refrigerant R-134a -> R-513A', 'refrigerant R-134a -> R-410A']],
    ['other-refrigerant at refrigerant'],
  ],
  [
    'a repair with an arrow that its charge knows nothing of',
    'liquid-line-leak.jobplan',
    [['refrigerant R-410A', 'refrigerant R-410A -> R-454B']],
    ['other-refrigerant at refrigerant'],
  ],
  [
    'a conversion that is not charged is told at the power',
    conversion,
    [['    charge system with R-513A 13 lb as liquid\n', '']],
    ['compressor-without-refrigerant at restore'],
  ],
  [
    'two visits, and neither charges',
    'heat-pump-mild-burnout.jobplan',
    [
      ['      charge system with R-410A 8 lb as liquid\n', ''],
      ['      charge system with R-410A 8 lb as liquid\n', ''],
    ],
    ['compressor-without-refrigerant at restore'],
  ],
  [
    'a part that the circuit lacks and two steps name',
    conversion,
    [['    solenoid kept\n', '']],
    ['unknown-name at open'],
  ],
];

// Velocities by handbook 10.1: vapour 500 to 4,000 ft/min, liquid about 300.
const sizes: readonly Mistake[] = [
  [
    '2-5/8 for 7/8',
    'liquid-line-leak.jobplan',
    [['tube 7/8 in', 'tube 2-5/8 in']],
    ['line-size-unlikely at suction-line'],
  ],
  [
    '1-1/8 for 3/8',
    'liquid-line-leak.jobplan',
    [['tube 3/8 in', 'tube 1-1/8 in']],
    ['line-size-unlikely at liquid-line'],
  ],
  ['1/4 for 3/8', 'liquid-line-leak.jobplan', [['tube 3/8 in', 'tube 1/4 in']], ['line-size-unlikely at liquid-line']],
  ['ten times the capacity', 'liquid-line-leak.jobplan', [['36000', '360000']], ['charge-does-not-fit at capacity']],
  ['a tenth of the capacity', 'liquid-line-leak.jobplan', [['36000', '3600']], ['charge-does-not-fit at capacity']],
  [
    'a patch of another size',
    'rubbed-liquid-line-pumped-down.jobplan',
    [['patch: liquid-line new {\n      tube 1/2 in', 'patch: liquid-line new {\n      tube 3/8 in']],
    ['line-size-unlikely at liquid-line'],
  ],
];

const visits: readonly Mistake[] = [
  [
    'a visit that is due before the one in front of it',
    'reach-in-burnout.jobplan',
    [['visit "Acid, drop" within 2 days', 'visit "Acid, drop" within 5 days']],
    ['visits-out-of-order at visit'],
  ],
  [
    'the pressure drop is read of a drier that is not there any more',
    'heat-pump-mild-burnout.jobplan',
    [
      [
        '      leak-check system\n      record quantities, readings\n    }\n  }',
        '      read pressure-drop of suction-drier, at most 3 psi, after 30 min\n      leak-check system\n      record quantities, readings\n    }\n  }',
      ],
    ],
    ['no-effect at read'],
  ],
];

const swabbed = 'old-lines-swabbed-and-blown.jobplan';
const orifice = 'fixed-orifice-conversion.jobplan';
const stock: readonly Mistake[] = [
  ['no swabs in the van', swabbed, [['    swabs 20\n', '']], ['tool-not-brought at pull-swab']],
  ['ten swabs for sixteen', swabbed, [['    swabs 20\n', '    swabs 10\n']], ['stock-falls-short at pull-swab']],
  [
    'no nitrogen in the van, and no volume known',
    'one-case-rack-runs-on.jobplan',
    [['    nitrogen 1 x n2\n', '']],
    ['tool-not-brought at pressure-test'],
  ],
  ['no nitrogen in the van', conversion, [['    nitrogen 1 x n2\n', '']], ['stock-falls-short at break-vacuum']],
  [
    'another refrigerant weighed in, of which none is brought',
    conversion,
    [['charge system with R-513A', 'charge system with R-134a']],
    ['other-refrigerant at charge'],
  ],
  [
    'another oil filled in, of which none is brought',
    orifice,
    [['compressor to POE', 'compressor to mineral']],
    ['oil-does-not-suit at change-oil'],
  ],
  ['less than half of the oil', orifice, [['POE 60 fl-oz,', 'POE 25 fl-oz,']], ['oil-amount-unlikely at change-oil']],
  ['ten times the oil stated', orifice, [['oil 60 fl-oz', 'oil 600 fl-oz']], ['oil-amount-unlikely at oil']],
  ['another oil brought', orifice, [['oil POE 250', 'oil mineral 250']], ['stock-falls-short at change-oil']],
];

it.each([...driers, ...statements, ...valves, ...heads, ...sizes, ...visits, ...stock])(
  '%s',
  (_, path, edits, expected) => expect(found(path, edits)).toEqual(expected),
);
