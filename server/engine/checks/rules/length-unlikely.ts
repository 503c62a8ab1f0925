import type { Part } from '../../circuit/graph';
import { isVapourLine } from '../../circuit/kinds';
import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import type { Plan } from '../../plan/plan';
import { inch } from '../../reference/table-units';
import { defineCheck } from '../define';
import { perHead } from '../per-head';
import { lines } from '../plant-facts';
import { amount, inOwn } from '../support';

/** Nothing shorter is drawn as a line (common practice, no source), m. */
const leastLength = 2 * inch;
/** Liquid and vapour run side by side from machine to coil: of so many times the length one is a slip (common practice, no source). */
const mostApart = 8;

/** A line whose length, rise or drop cannot be meant. */
export const lengthUnlikely = defineCheck({
  name: 'length-unlikely',
  severity: 'warning',
  title: 'A length that the line cannot have',
  acceptable: true,
  noFix: 'Only whoever measures the line again knows its length.',
  reads: 'figure',
  ground: 'practice',
  meaning:
    'A line rises or drops further than it is long; or it is shorter than 2 in (5 cm); or, in a circuit with one liquid line and one suction or vapour line and no long hot-gas line, the one is more than eight times as long as the other.',
  why: 'Charge, solvent, nitrogen and the return of the oil are reckoned from it: with a digit too many or another unit the crew brings ten times too much, or too little.',
  source: 'a rise lies within the length of its line (geometry); the other limits: common practice, no source',
  wrong: {
    base: 'split',
    instead: [
      ['tube 7/8 in ACR\n      length 40 ft', 'tube 7/8 in ACR\n      length 40 ft\n      rise 60 ft # <- here'],
    ],
  },
  right: {
    base: 'split',
    instead: [['tube 7/8 in ACR\n      length 40 ft', 'tube 7/8 in ACR\n      length 40 ft\n      rise 6 ft']],
  },
  plan(whole) {
    for (const { part, word, message, other } of slipped(whole.plan)) {
      const bound = child(whole.plan.partStatements[part]?.block ?? [], word);
      const report = {
        message,
        concerns: [part],
        ...(other !== undefined && { related: [{ part: other, message: 'the other line of the pair' }] }),
      };
      if (bound) whole.reportAt(bound, bound.spans['length'] ?? bound.spans['height'] ?? wordSpan(bound), report);
      else whole.reportPart(part, report);
    }
  },
});

interface Slip {
  readonly part: number;
  /** The statement of the part that is at fault. */
  readonly word: 'length' | 'rise' | 'drop';
  readonly message: string;
  readonly other?: number;
}

const slipped = perHead((plan): readonly Slip[] => {
  const measured = lines(plan).filter((line) => line.standing !== 'removed' && line.properties.length !== undefined);
  const own = measured.flatMap((line) => alone(plan, line));
  const told = new Set(own.map(({ part }) => part));
  const pairs = plan.graph.circuits.flatMap((_, circuit) => ofPair(plan, circuit, measured));
  return [...own, ...pairs.filter(({ part, other }) => !told.has(part) && !told.has(other!))];
});

/** What is wrong with a line by itself. */
function alone(plan: Plan, line: Part): readonly Slip[] {
  const { length, rise, drop } = line.properties;
  const long = amount(plan, 'length', length!);
  if (length! < leastLength * 0.999)
    return [
      {
        part: line.index,
        word: 'length',
        message: `${line.name} is to be ${long} long: under ${inOwn(plan, '2 in', '5 cm')} there is no line to speak of (common practice, no source); read figure and unit again.`,
      },
    ];
  for (const [word, goes] of [
    ['rise', rise],
    ['drop', drop],
  ] as const)
    if (goes !== undefined && goes > length! * 1.001)
      return [
        {
          part: line.index,
          word,
          message: `${line.name} is to ${word} by ${amount(plan, 'length', goes)} and is ${long} long: no line goes further than its own length; one of the two figures is wrong.`,
        },
      ];
  return [];
}

const hot: ReadonlySet<string> = new Set(['discharge-line', 'hot-gas-line']);

/** The one pair of a circuit of which one line is many times as long as the other: the one that is told is the longer. */
function ofPair(plan: Plan, circuit: number, measured: readonly Part[]): readonly Slip[] {
  const all = lines(plan).filter((line) => line.circuit === circuit && line.standing !== 'removed');
  const liquids = all.filter((line) => line.kind.kind === 'liquid-line');
  const vapours = all.filter((line) => isVapourLine(line.kind));
  const [liquid, suction] = [liquids[0], vapours[0]];
  if (liquids.length !== 1 || vapours.length !== 1 || !measured.includes(liquid!) || !measured.includes(suction!))
    return [];
  const [short, long] = [liquid!, suction!].sort((a, b) => a.properties.length! - b.properties.length!) as [Part, Part];
  if (long.properties.length! <= short.properties.length! * mostApart) return [];
  // A compressor that stands by the coil sends hot gas the long way instead.
  const away = (line: Part): boolean =>
    hot.has(line.kind.kind) && (line.properties.length ?? 0) > short.properties.length!;
  if (all.some(away)) return [];
  return [
    {
      part: long.index,
      word: 'length',
      other: short.index,
      message: `${long.name} is to be ${amount(plan, 'length', long.properties.length!)} long and ${short.name} ${amount(plan, 'length', short.properties.length!)}: the two run the same way, and one of more than ${mostApart} times the other is a slip (common practice, no source); measure again.`,
    },
  ];
}
