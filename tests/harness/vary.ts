import type { Line } from './scene';
import { stepsOf } from './step-edits';

/** One change of a plan's steps, by numbers that are taken modulo what there is to choose from. */
export interface Choice {
  readonly kind: string;
  readonly where: number;
  readonly other: number;
}

type Change = (lines: readonly string[], choice: Choice) => readonly string[] | null;

const pick = <T>(from: readonly T[], number: number): T | undefined =>
  from.length === 0 ? undefined : from[number % from.length];

const indentOf = (line: string): string => /^\s*/.exec(line)![0];

const before = (lines: readonly string[], at: number, ...put: readonly string[]): readonly string[] => [
  ...lines.slice(0, at),
  ...put.map((line) => indentOf(lines[at]!) + line),
  ...lines.slice(at),
];

const withVerb = (lines: readonly string[], ...verbs: readonly string[]): readonly Line[] =>
  stepsOf(lines).filter(({ verb }) => verbs.includes(verb));

/** "low-side, high-side" of "pressure-test low-side, high-side to 200 psig for 60 min". */
const targetsOf = ({ plain, verb }: Line): string => plain.slice(verb.length + 1).split(/ to | for /)[0]!;

/** Gives a step an `if-fails` to an earlier one, which gets a label if it has none. */
function wayBack(lines: readonly string[], from: Line, to: Line): readonly string[] | null {
  if (from.to !== from.from) return null;
  // Lines move with each change, so the next free number, not the line's own.
  const used = lines.filter((line) => /^ *again-\d+: /.test(line)).length;
  const label = to.label ?? `again-${used + 1}`;
  return lines.flatMap((line, at) => {
    const indent = indentOf(line);
    const named = at === to.from && to.label === null ? `${indent}${label}: ${line.trim()}` : line;
    return at === from.from
      ? [`${named} {`, `${indent}  if-fails back to ${label}, at most 2 times`, `${indent}}`]
      : [named];
  });
}

/** Changes that keep a sound plan sound, whatever stands around them. */
const sound: Readonly<Record<string, Change>> = {
  photo: (lines, { where }) => {
    const step = pick(stepsOf(lines), where);
    return step ? before(lines, step.from, 'photo gauge') : null;
  },
  hold: (lines, { where }) => {
    const step = pick(withVerb(lines, 'recover', 'evacuate', 'label', 'record'), where);
    return step ? before(lines, step.from, 'hold "Seen" by lead') : null;
  },
  'nitrogen break': (lines, { where }) => {
    const step = pick(withVerb(lines, 'evacuate'), where);
    if (!step) return null;
    const put = [`evacuate ${targetsOf(step)} to 1500 micron`, 'break-vacuum with nitrogen to 2 psig'];
    return before(lines, step.from, ...put);
  },
  'breaks in rounds': (lines, { where }) => {
    const step = pick(withVerb(lines, 'evacuate'), where);
    if (!step) return null;
    const pull = `evacuate ${targetsOf(step)} to 1500 micron`;
    return before(
      lines,
      step.from,
      'repeat at least 2, at most 3 {',
      `  ${pull}`,
      '  break-vacuum with nitrogen to 2 psig',
      '}',
    );
  },
  'first stage': (lines, { where }) => {
    const step = pick(withVerb(lines, 'pressure-test'), where);
    return step ? before(lines, step.from, `pressure-test ${targetsOf(step)} to 10 psig for 10 min`) : null;
  },
  'test again': (lines, { where }) => {
    const step = pick(withVerb(lines, 'pressure-test', 'evacuate'), where);
    return step ? wayBack(lines, step, step) : null;
  },
  'pull again': (lines, { where }) => {
    const step = pick(withVerb(lines, 'decay-test'), where);
    const to =
      step &&
      withVerb(lines, 'evacuate')
        .filter((each) => each.from < step.from && targetsOf(each) === targetsOf(step))
        .at(-1);
    return step && to ? wayBack(lines, step, to) : null;
  },
  phase: (lines, { where, other }) => {
    const first = pick(stepsOf(lines), where);
    if (!first) return null;
    let to = first.to;
    for (let more = other % 5; more > 0; more--) {
      const next = stepsOf(lines).find((each) => each.from === to + 1 && each.depth === first.depth);
      if (!next) break;
      to = next.to;
    }
    return wrapped(lines, first.from, to, 'phase "Part of it"');
  },
  'last visit': (lines) => {
    const last = stepsOf(lines).at(-1);
    if (
      !last ||
      !['record', 'label', 'photo'].includes(last.verb) ||
      lines.some((line) => /^\s*(\S+: )?visit /.test(line))
    )
      return null;
    return wrapped(lines, last.from, last.to, 'visit "Later" within 2 days');
  },
};

function wrapped(lines: readonly string[], from: number, to: number, heading: string): readonly string[] {
  const indent = indentOf(lines[from]!);
  const inner = lines.slice(from, to + 1).map((line) => `  ${line}`);
  return [...lines.slice(0, from), `${indent}${heading} {`, ...inner, `${indent}}`, ...lines.slice(to + 1)];
}

/** What a tired author does to the order of the work: sound or not, nobody has looked. */
const careless: Readonly<Record<string, Change>> = {
  'left out': (lines, { where }) => {
    const step = pick(stepsOf(lines), where);
    return step ? [...lines.slice(0, step.from), ...lines.slice(step.to + 1)] : null;
  },
  moved: (lines, { where, other }) => {
    const steps = stepsOf(lines);
    const [step, to] = [pick(steps, where), pick(steps, other)];
    if (!step || !to || step === to) return null;
    const own = lines.slice(step.from, step.to + 1);
    return lines.flatMap((line, at) => {
      const kept = at >= step.from && at <= step.to ? [] : [line];
      return at === to.from ? [...own, ...kept] : kept;
    });
  },
  doubled: (lines, { where, other }) => {
    const steps = stepsOf(lines);
    const [step, to] = [pick(steps, where), pick(steps, other)];
    if (!step || !to) return null;
    const own = lines.slice(step.from, step.to + 1).map((line) => line.replace(/^(\s*)[\w-]+: /, '$1'));
    return [...lines.slice(0, to.from), ...own, ...lines.slice(to.from)];
  },
  'back to anywhere': (lines, { where, other }) => {
    const steps = stepsOf(lines);
    const from = pick(steps, where);
    const to =
      from &&
      pick(
        steps.filter((each) => each.from <= from.from),
        other,
      );
    return from && to ? wayBack(lines, from, to) : null;
  },
};

export const soundKinds: readonly string[] = Object.keys(sound);
export const carelessKinds: readonly string[] = Object.keys(careless);

/** A text with changes made one after the other; those that find no place are left out. */
export function varied(text: string, choices: readonly Choice[]): string {
  let lines: readonly string[] = text.split('\n');
  for (const choice of choices) lines = (sound[choice.kind] ?? careless[choice.kind])!(lines, choice) ?? lines;
  return lines.join('\n');
}
