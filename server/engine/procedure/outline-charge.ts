import type { Block, Cell } from './block';
import type { ChargeAids, Fact, PressureStrip, WeighIn } from './document';
import { sentence, small, strong } from './sentence';

const cell = (value: string): Cell => ({ kind: 'text', text: sentence(value) });

function stripBlocks(strip: PressureStrip, index: number): Block[] {
  return [
    {
      kind: 'heading',
      level: 2,
      text: `${strip.refrigerant}: pressure and temperature about the working point`,
      anchor: `strip-${index + 1}`,
      line: null,
      depth: 0,
      newPage: false,
    },
    {
      kind: 'table',
      columns: [
        { title: `At ${strip.temperatureUnit}`, share: 12, align: 'right' },
        { title: `Bubble, ${strip.pressureUnit}: ${strip.bubbleUse}`, share: 33, align: 'right' },
        { title: `Dew, ${strip.pressureUnit}: ${strip.dewUse}`, share: 33, align: 'right' },
        { title: '', share: 22, align: 'left' },
      ],
      rows: strip.rows.map((row) => [
        row.note === null ? cell(row.temperature) : { kind: 'text', text: [strong(row.temperature)] },
        row.note === null ? cell(row.bubble) : { kind: 'text', text: [strong(row.bubble)] },
        row.note === null ? cell(row.dew) : { kind: 'text', text: [strong(row.dew)] },
        { kind: 'text', text: row.note === null ? [] : [strong(`← ${row.note}`)] },
      ]),
    },
  ];
}

function facts(title: string, anchor: string, rows: readonly Fact[]): Block[] {
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: title, anchor, line: null, depth: 0, newPage: false },
    {
      kind: 'table',
      columns: [
        { title: '', share: 30, align: 'left' },
        { title: '', share: 70, align: 'left' },
      ],
      rows: rows.map((row) => [
        { kind: 'text', text: [strong(row.label)] },
        { kind: 'text', text: row.value },
      ]),
    },
  ];
}

function weighBlocks(weighIn: WeighIn): Block[] {
  const write: Cell = { kind: 'write', unit: weighIn.unit };
  return [
    { kind: 'heading', level: 2, text: 'Weighing in', anchor: 'weigh-in', line: null, depth: 0, newPage: false },
    {
      kind: 'table',
      columns: [
        { title: 'Cylinder', share: 22, align: 'left' },
        { title: 'Weight at start', share: 26, align: 'left' },
        { title: 'Weight at end', share: 26, align: 'left' },
        { title: 'Difference: went in', share: 26, align: 'left' },
      ],
      rows: [
        ...weighIn.cylinders.map((one): readonly Cell[] => [cell(one), write, write, write]),
        [cell('All together'), { kind: 'text', text: [] }, { kind: 'text', text: weighIn.limit }, write],
      ],
    },
  ];
}

/** Pressure-temperature strips, targets, charge weights and weighing in; nothing at all for a job without charge. */
export function chargeBlocks(aids: ChargeAids): Block[] {
  const parts = [
    ...aids.strips.flatMap(stripBlocks),
    ...facts('Targets', 'targets', aids.targets),
    ...facts('Charge weights', 'weights', aids.weights),
    ...(aids.weighIn === null ? [] : weighBlocks(aids.weighIn)),
  ];
  if (parts.length === 0) return [];
  const note =
    aids.strips.length === 0
      ? []
      : [
          {
            kind: 'paragraph' as const,
            text: [
              small(
                'Gauge pressures at this site. Bubble belongs to liquid, dew to vapour; never read one for the other.',
              ),
            ],
            small: true,
            indent: 0,
            keep: true,
          },
        ];
  return [
    { kind: 'heading', level: 1, text: 'Charge aids', anchor: 'charge-aids', line: null, depth: 0, newPage: false },
    ...note,
    ...parts,
  ];
}
