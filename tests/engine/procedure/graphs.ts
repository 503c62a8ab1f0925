import {
  type DrawnPart,
  drawnPart,
  type Graph,
  type Mark,
  type Sign,
} from '../../../server/engine/procedure/drawing/graph';

type More = Partial<Omit<DrawnPart, 'kind'>>;
const part = (name: string, sign: Sign, size: string | null = null, more: More = {}) =>
  drawnPart(name, sign, { size, ...more });
const fresh = { state: 'new' } as const;
const never = { neverFlush: true } as const;
const ends: readonly Mark[] = [
  { at: 'inlet', what: 'near' },
  { at: 'inlet', what: 'solvent-in' },
  { at: 'outlet', what: 'far' },
  { at: 'outlet', what: 'solvent-out' },
];

/** A split: five parts and a trap in the suction line. */
export const splitGraph: Graph = {
  patterns: {},
  series: [
    part('compressor', 'compressor', null, { ...fresh, ...never }),
    part('condenser', 'coil', null, { ...fresh, ...never, shut: true }),
    part('liquid-line', 'line', '3/8 in, 48 ft', { marks: ends }),
    part('filter-drier', 'drier', null, { ...fresh, ...never }),
    part('expansion-valve', 'expansion-valve', null, { ...fresh, ...never }),
    part('evaporator', 'coil', null, { ...fresh, ...never }),
    part('suction-line', 'line', '7/8 in, 48 ft', { marks: ends }),
  ],
};

const freezer = (n: string, length: string, extra: readonly DrawnPart[] = []) => [
  part(`sol-${n}`, 'driven-valve', null, { shut: n === '1' }),
  part(`txv-${n}`, 'expansion-valve', null, { ...fresh, ...never }),
  part(`evap-${n}`, 'coil', null, never),
  ...extra,
  part(`suction-${n}`, 'line', `1-1/8 in, ${length}`),
];

/** A rack: two compressors in parallel, three boxes, a double riser: about thirty parts. */
export const rackGraph: Graph = {
  patterns: { hatch: 'vacuum, 300 micron', dots: 'nitrogen, 200 psig', 'cross-hatch': 'never pumped down' },
  series: [
    {
      kind: 'parallel',
      branches: [
        {
          name: 'a',
          series: [
            part('valve-as', 'valve', null, { shut: true }),
            part('comp-a', 'compressor', null, never),
            part('valve-ad', 'valve', null, { shut: true }),
          ],
        },
        {
          name: 'b',
          series: [
            part('stub-b', 'line', '1-1/8 in, 6 ft', { marks: ends }),
            part('valve-bs', 'valve'),
            part('comp-b', 'compressor', null, { ...fresh, ...never }),
            part('valve-bd', 'valve'),
            part('discharge-b', 'line', '7/8 in, 6 ft', { marks: ends }),
          ],
        },
      ],
    },
    part('discharge-line', 'line', '1-1/8 in, 30 ft'),
    part('oil-separator', 'vessel', null, never),
    part('condenser', 'coil', null, { ...never, fill: 'dots', caption: 'nitrogen' }),
    part('receiver', 'vessel', null, { ...never, fill: 'hatch', caption: 'vacuum' }),
    part('liquid-drier', 'drier', null, { ...fresh, ...never }),
    part('sight-glass', 'sight-glass', null, fresh),
    part('liquid-main', 'line', '5/8 in, 58 ft', { fill: 'cross-hatch', caption: 'never pumped down' }),
    {
      kind: 'parallel',
      branches: [
        { name: 'freezer-1', series: freezer('1', '24 ft') },
        { name: 'freezer-2', series: freezer('2', '31 ft') },
        { name: 'dairy', series: freezer('3', '12 ft', [part('epr-3', 'driven-valve')]) },
      ],
    },
    part('suction-main', 'line', '1-5/8 in, 20 ft'),
    {
      kind: 'parallel',
      branches: [
        { name: 'small', series: [part('riser-small', 'line', '1-1/8 in, 16 ft', { marks: ends })] },
        { name: 'large', series: [part('riser-large', 'line', '1-5/8 in, 14 ft', { marks: ends, state: 'reused' })] },
      ],
    },
    part('old-accumulator', 'vessel', null, { state: 'removed' }),
    part('suction-drier', 'drier', null, { state: 'added', ...never }),
  ],
};

/** Three zones behind a branch box that the flow meets twice, with a double riser in one of them. */
export const nestedGraph: Graph = {
  patterns: {},
  series: [
    part('compressor', 'compressor', null, { ...fresh, ...never }),
    part('reversing-valve', 'box', null, { ...fresh, ...never }),
    part('outdoor-coil', 'coil', null, { ...fresh, ...never, shut: true }),
    part('main-liquid', 'line', '3/8 in, 36 ft', { marks: ends }),
    part('branch-box', 'box', null, { ...fresh, ...never }),
    {
      kind: 'parallel',
      branches: ['den', 'loft', 'study'].map((room) => ({
        name: room,
        series: [
          part(`eev-${room}`, 'expansion-valve', null, { ...fresh, ...never, shut: true }),
          part(`liquid-${room}`, 'line', '1/4 in, 24 ft', { marks: ends }),
          part(`head-${room}`, 'coil', null, { ...fresh, ...never }),
          part(`vapour-${room}`, 'line', '3/8 in, 24 ft'),
          {
            kind: 'parallel' as const,
            branches: [
              { name: 'small', series: [part(`riser-small-${room}`, 'line', '3/8 in, 9 ft')] },
              { name: 'large', series: [part(`riser-large-${room}`, 'line', '1/2 in, 9 ft')] },
            ],
          },
        ],
      })),
    },
    { kind: 'through', name: 'branch-box' },
    part('main-vapour', 'line', '5/8 in, 36 ft', { marks: ends }),
    { kind: 'through', name: 'reversing-valve' },
    part('accumulator', 'vessel', null, { ...fresh, ...never }),
  ],
};
