import type { Figure, Line } from './scene';
import { type Found, figuresIn, inSI } from './units';

/** What an operator makes of a file: its lines after the edit, and what was touched. */
export interface Made {
  readonly operator: string;
  readonly at: number;
  readonly was: string;
  readonly now: string;
  readonly lines: readonly string[];
  readonly touched: readonly number[];
  readonly past?: readonly Line[];
  /** The steps that were left out, moved or copied together. */
  readonly group?: readonly Line[];
  readonly figure?: Figure;
}

const headings = /^(phase|repeat|visit)\b/;
const blocks = /^\s*(steps|before [\w-]+ .*|after [\w-]+ .*|replace [\w-]+ .*) ?\{\s*$/;

/** The statements of all blocks of steps of a file, in order; headings are kept out, their children are not. */
export function stepsOf(lines: readonly string[]): readonly Line[] {
  const found: Line[] = [];
  let inside = false;
  let depth = 0;
  let base = 0;
  for (let at = 0; at < lines.length; at++) {
    const code = lines[at]!.replace(/"[^"]*"/g, '""').replace(/#.*/, '');
    const trimmed = lines[at]!.trim();
    if (!inside && blocks.test(code)) {
      inside = true;
      base = depth;
    } else if (inside && trimmed !== '' && !trimmed.startsWith('#') && trimmed !== '}') {
      const label = /^([a-z][\w-]*): /.exec(trimmed)?.[1] ?? null;
      const plain = label ? trimmed.slice(label.length + 2) : trimmed;
      if (!headings.test(plain)) {
        let to = at;
        if (/\{\s*$/.test(code)) while (lines[to]!.trim() !== '}' && to + 1 < lines.length) to++;
        const back = /back to ([\w-]+)/.exec(lines.slice(at, to + 1).join(' '))?.[1] ?? null;
        found.push({ from: at, to, depth, label, plain, verb: plain.split(/[\s{]/)[0]!, back });
        at = to;
        continue;
      }
    }
    depth += (code.match(/\{/g) ?? []).length - (code.match(/\}/g) ?? []).length;
    if (inside && depth <= base) inside = false;
  }
  return found;
}

const spliced = (
  lines: readonly string[],
  from: number,
  gone: number,
  ...put: readonly string[]
): readonly string[] => [...lines.slice(0, from), ...put, ...lines.slice(from + gone)];

/** Statements left out, doubled, and moved: past one, two, four or eight others, to the start, to the end. */
export function* orderEdits(lines: readonly string[], steps: readonly Line[]): Generator<Made> {
  for (const [at, step] of steps.entries()) {
    const { from, to } = step;
    const own = lines.slice(from, to + 1);
    const was = lines[from]!;
    const base = { at, was };
    yield { ...base, operator: 'delete', now: '', lines: spliced(lines, from, own.length), touched: [from - 1, from] };
    yield {
      ...base,
      operator: 'duplicate',
      now: `${was} twice`,
      lines: spliced(lines, to + 1, 0, ...own),
      touched: [from, to + 1],
    };
    for (const by of [1, 2, 4, 8]) {
      const other = steps[at + by];
      if (!other) continue;
      // Moved down behind `other`, into its block if it stands in another one.
      const down = spliced(spliced(lines, other.to + 1, 0, ...own), from, own.length);
      const past = steps.slice(at + 1, at + by + 1);
      const operator = by === 1 ? (other.from === to + 1 ? 'swap' : 'into next phase') : `down ${by}`;
      yield {
        ...base,
        operator,
        now: `behind ${other.plain}`,
        lines: down,
        touched: [other.to + 1 - own.length],
        past,
      };
      if (by === 1) continue;
      const before = steps[at - by];
      if (!before) continue;
      const up = spliced(spliced(lines, from, own.length), before.from, 0, ...own);
      yield {
        ...base,
        operator: `up ${by}`,
        now: `before ${before.plain}`,
        lines: up,
        touched: [before.from],
        past: steps.slice(at - by, at),
      };
    }
    const last = steps.at(-1)!;
    if (last !== step && step.depth <= last.depth) {
      const moved = spliced(spliced(lines, last.to + 1, 0, ...own), from, own.length);
      yield {
        ...base,
        operator: 'move to end',
        now: 'last',
        lines: moved,
        touched: [last.to + 1 - own.length],
        past: steps.slice(at + 1),
      };
    }
    const first = steps[0]!;
    if (first !== step) {
      const moved = spliced(spliced(lines, from, own.length), first.from, 0, ...own);
      yield {
        ...base,
        operator: 'move to start',
        now: 'first',
        lines: moved,
        touched: [first.from],
        past: steps.slice(0, at),
      };
    }
  }
}

type Change = readonly [operator: string, find: RegExp, put: string];
const head = '^(\\s*(?:[\\w-]+: )?';
/** Clauses left out or put differently, words for their opposites. */
const clauses: readonly Change[] = [
  ['drop first of list', new RegExp(`${head}[\\w-]+ (?:superheat of |valves of )?)[\\w-]+, (?!at most)`), '$1'],
  [
    'drop last of list',
    new RegExp(
      `${head}(?!inspect|read|record)[\\w-]+ [\\w-]+(?:, [\\w-]+)*), (?!rise|at most|bubbles|leaving|severe|for)[\\w-]+`,
    ),
    '$1',
  ],
  ['drop container', / into container( outdoors)?/, ''],
  ['drop outdoors', / outdoors\b/, ''],
  ['drop nitrogen', / with nitrogen at [\d.]+ [\w/]+/, ''],
  ['drop tool', / with (torque-wrench|new-gaskets|clamp|pressing-tool)/, ''],
  ['drop limit', /, rise at most [\d.]+ \S+/, ''],
  ['drop bubbles', /, bubbles on every joint/, ''],
  ['drop magnet', / by (magnet|stem)/, ''],
  [
    'drop time',
    /^(\s*(?:[\w-]+: )?(?:decay-test|pressure-test|purge|blow-out|energise|run).*) for [\d.]+ (?:s|min|h)/,
    '$1',
  ],
  [
    'drop level',
    /^(\s*(?:[\w-]+: )?(?:evacuate|recover|pressure-test|purge) .*?) (?:to|at) (?:[\d.]+ \w+(?: gauge| absolute| vacuum)?|test-pressure)/,
    '$1',
  ],
  ['drop wait', / after \d+ min/, ''],
  ['drop phase of charge', / as (liquid|vapour)/, ''],
  ['liquid to vapour', / as liquid/, ' as vapour'],
  ['near end only', / at both ends/, ' at near end'],
  ['far end only', / at both ends/, ' at far end'],
  ['other end', / at far end/, ' at near end'],
  ['nitrogen to air', / with nitrogen to/, ' with air to'],
  ['nitrogen to oxygen', /^(\s*(?:[\w-]+: )?pressure-test .*? to \S+(?: psig| [kM]Pa gauge)?)/, '$1 with oxygen'],
  ['open to close', new RegExp(`${head})open `), '$1close '],
  ['close to open', new RegExp(`${head})close `), '$1open '],
  ['connect to disconnect', new RegExp(`${head})connect ([^\\n]*?)( with .*)?$`), '$1disconnect $2'],
  ['lock-out to restore', new RegExp(`${head})lock-out `), '$1restore '],
  ['restore to lock-out', new RegExp(`${head})restore power`), '$1lock-out power'],
  ['crimp to cap', new RegExp(`${head})(?:crimp|tape|choke) (.*?)(?:,? (?:leaving|to) \\S+ \\w+)$`), '$1cap $2'],
  ['purge to flush', new RegExp(`${head})purge (.*) at `), '$1flush $2 at '],
  [
    'system to one part',
    new RegExp(`${head}(?:recover|pressure-test|evacuate|decay-test|prove-zero) )(?:system|each open part)`),
    '$1compressor',
  ],
  ['kept to new', /each kept line/, 'each new line'],
  ['kept to one line', /each kept line/, 'suction-line'],
  ['psig to psi', /(\d) psig/, '$1 psi'],
  ['gauge dropped', /(\d) ([kM]Pa) gauge/, '$1 $2'],
  ['micron to torr', /(\d) micron/, '$1 torr'],
  ['min to s', /(\d) min\b/, '$1 s'],
  ['s to min', /(\d) s\b/, '$1 min'],
  ['h to min', /(\d) h\b/, '$1 min'],
  ['cfh to cfm', /(\d) cfh/, '$1 cfm'],
  ['lb to oz', /(\d) lb(?! \d)/, '$1 oz'],
  ['inHg to psig', /([1-9]\d*) inHg/, '$1 psig'],
  ['misspell verb', new RegExp(`${head})(\\w)(\\w)`), '$1$3$2q'],
  [
    'misspell name',
    new RegExp(
      `${head}(?:open|close|install|cut-out|disconnect|connect|remove|place) )(?!each|system|service-valves|expansion-valves|valves|new|old)([\\w-]+)`,
    ),
    '$1$2x',
  ],
];

/** Makes edits of the one line that a step begins with. */
export const lineChange =
  (lines: readonly string[], step: Line, at: number) =>
  (operator: string, now: string, figure?: Figure): Made => ({
    operator,
    at,
    was: lines[step.from]!,
    now,
    lines: spliced(lines, step.from, 1, now),
    touched: [step.from],
    ...(figure && { figure }),
  });

/** One line changed. */
export function* clauseEdits(lines: readonly string[], steps: readonly Line[]): Generator<Made> {
  for (const [at, step] of steps.entries()) {
    const was = lines[step.from]!;
    const made = lineChange(lines, step, at);
    for (const [operator, find, put] of clauses) {
      const now = was.replace(find, put);
      if (now === was) continue;
      const [old, fresh] = [figuresIn(was), figuresIn(now)];
      const changed = old.length === fresh.length ? old.findIndex((each, k) => each.unit !== fresh[k]!.unit) : -1;
      const figure = changed < 0 ? undefined : figureOf(old[changed]!, fresh[changed]!);
      yield made(operator, now, figure);
    }
    if (step.label) yield made('drop label', was.replace(`${step.label}: `, ''));
    for (const found of figuresIn(was)) {
      for (const factor of [10, 2, 0.5, 0.1]) {
        const number = Math.round(found.number * factor * 100) / 100;
        if (number === found.number) continue;
        const now = was.slice(0, found.from) + number + was.slice(found.to);
        yield made(`figure x ${factor}`, now, figureOf(found, { ...found, number }, besides(was, found)));
      }
    }
    if (step.to > step.from) {
      const first = was.replace(/ \{\s*$/, '');
      const bare = spliced(lines, step.from, step.to - step.from + 1, first);
      yield {
        operator: 'drop block',
        at,
        was: lines.slice(step.from, step.to + 1).join(' '),
        now: first,
        lines: bare,
        touched: [step.from],
      };
      for (let k = step.from + 1; k < step.to; k++) {
        const label = /back to ([\w-]+)/.exec(lines[k]!)?.[1];
        if (!label) continue;
        const inner = (operator: string, now: string): Made => ({
          operator,
          at,
          was: lines[k]!,
          now,
          lines: spliced(lines, k, 1, now),
          touched: [step.from, k],
        });
        yield inner('back to nowhere', lines[k]!.replace(label, `${label}x`));
        const others = steps.filter((each) => each.label !== null && each.label !== label);
        for (const other of [others[0], others.at(-1)])
          if (other) yield inner('back to another', lines[k]!.replace(label, other.label!));
      }
    }
  }
}

/** What stands with a figure in one amount, in SI: the pounds of "9 lb 3 oz" for its ounces, the ounces for its pounds. */
function besides(line: string, { from, to, unit }: Found): number {
  const pounds = unit === 'oz' ? /(\d+(?:\.\d+)?) lb $/.exec(line.slice(0, from)) : null;
  const ounces = unit === 'lb' ? /^ lb (\d+(?:\.\d+)?) oz\b/.exec(line.slice(to)) : null;
  return pounds ? inSI(Number(pounds[1]), 'lb')! : ounces ? inSI(Number(ounces[1]), 'oz')! : 0;
}

function figureOf(
  was: { number: number; unit: string; key: string },
  now: { number: number; unit: string },
  rest = 0,
): Figure {
  return {
    was: (inSI(was.number, was.unit) ?? was.number) + rest,
    now: (inSI(now.number, now.unit) ?? now.number) + rest,
    key: was.key,
    unit: was.unit,
    nowUnit: now.unit,
  };
}
