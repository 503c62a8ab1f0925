import { lineVerdict, type Ruling } from './rulings';
import type { Line, Scene } from './scene';

/** One edit of the text of a sound plan, made by an operator that knows nothing of the checks. */
export interface LineEdit {
  readonly operator: string;
  readonly file: string;
  readonly what: string;
  readonly text: string;
  /** Zero-based lines of the edited text that the edit touched. */
  readonly touched: readonly number[];
  readonly ruling: Ruling;
}

const headings = /^(phase|repeat|visit)\b/;

/** The statements of all steps blocks of a file, in order; headings are kept out, their children are not. */
export function stepsOf(lines: readonly string[]): readonly Line[] {
  const found: Line[] = [];
  let inside = false;
  let depth = 0;
  let base = 0;
  for (let at = 0; at < lines.length; at++) {
    const code = lines[at]!.replace(/"[^"]*"/g, '""').replace(/#.*/, '');
    const trimmed = lines[at]!.trim();
    if (!inside && /^\s*steps \{/.test(code)) {
      inside = true;
      base = depth;
    } else if (inside && trimmed !== '' && !trimmed.startsWith('#') && trimmed !== '}') {
      const label = /^([a-z][\w-]*): /.exec(trimmed)?.[1] ?? null;
      const plain = label ? trimmed.slice(label.length + 2) : trimmed;
      if (!headings.test(plain)) {
        let to = at;
        if (/\{\s*$/.test(code)) while (lines[to]!.trim() !== '}' && to + 1 < lines.length) to++;
        found.push({ from: at, to, depth, label, plain, verb: plain.split(/[\s{]/)[0]! });
        at = to;
        continue;
      }
    }
    depth += (code.match(/\{/g) ?? []).length - (code.match(/\}/g) ?? []).length;
    if (inside && depth <= base) inside = false;
  }
  return found;
}

/** Every edit that the operators make of one file, always in the same order. */
export function* editsOf(file: string, source: string): Generator<LineEdit> {
  const lines = source.split('\n');
  const steps = stepsOf(lines);
  const put = (operator: string, scene: Scene, next: readonly string[], touched: readonly number[]): LineEdit => ({
    operator,
    file,
    what: `${scene.was.trim()} => ${scene.now.trim() || 'nothing'}`,
    text: next.join('\n'),
    touched,
    ruling: lineVerdict(operator, scene),
  });
  for (const [at, step] of steps.entries()) {
    const { from, to } = step;
    const own = lines.slice(from, to + 1);
    const was = lines[from]!;
    const scene = (now: string, other?: Line): Scene => ({ steps, at, source, was, now, ...(other && { other }) });
    yield put('delete', scene(''), spliced(lines, from, own.length), [from - 1, from]);
    yield put('duplicate', scene(`${was} twice`), spliced(lines, to + 1, 0, ...own), [from, to + 1]);
    const next = steps[at + 1];
    if (next && next.from === to + 1 && next.depth === step.depth) {
      const others = lines.slice(next.from, next.to + 1);
      const swapped = spliced(lines, from, own.length + others.length, ...others, ...own);
      yield put('swap', scene(`after ${next.plain}`, next), swapped, [from, from + others.length]);
    }
    const last = steps.at(-1)!;
    if (last !== step && step.depth <= last.depth) {
      const moved = spliced(spliced(lines, last.to + 1, 0, ...own), from, own.length);
      yield put('move to end', scene('last'), moved, [last.to + 1 - own.length]);
    }
    const first = steps[0]!;
    if (first !== step) {
      const moved = spliced(spliced(lines, from, own.length), first.from, 0, ...own);
      yield put('move to start', scene('first'), moved, [first.from]);
    }
    const change = (operator: string, now: string): LineEdit | null =>
      now === was ? null : put(operator, scene(now), spliced(lines, from, 1, now), [from]);
    const one: (LineEdit | null)[] = [
      change(
        'drop from list',
        was.replace(
          /^(\s*(?:[\w-]+: )?(?:disconnect|connect|open|close|restore|return|cap|trim|install|place|cut-out) )[\w-]+, /,
          '$1',
        ),
      ),
      change('drop container', was.replace(/ into container( outdoors)?/, '')),
      change('drop nitrogen', was.replace(/ with nitrogen at [\d.]+ \S+/, '')),
      change('one end only', was.replace(' at both ends', ' at near end')),
      change('drop limit', was.replace(/, rise at most [\d.]+ \S+/, '')),
      change('drop label', step.label ? was.replace(`${step.label}: `, '') : was),
      change('misspell verb', was.replace(step.plain, step.plain.replace(/^(\w)(\w)/, '$2$1q'))),
      change('psig to psi', was.replace(/(\d) psig/, '$1 psi')),
      change('micron to torr', was.replace(/(\d) micron/, '$1 torr')),
      change(
        'misspell name',
        was.replace(
          /((?:open|close|install|cut-out|disconnect|connect|remove|adjust superheat of) )(?!each|system|service-valves|expansion-valves|valves|new|old)([\w-]+)/,
          '$1$2x',
        ),
      ),
      ...[10, 0.1, 0.5].map((factor) =>
        change(
          `figure x ${factor}`,
          was.replace(/(?<![\w-])(\d+(?:\.\d+)?)(?= (?:psig|kPa|cfh|micron|inHg|lb|kg|Pa)\b)/, (n) =>
            String(Math.round(Number(n) * factor * 100) / 100),
          ),
        ),
      ),
    ];
    for (const edit of one) if (edit) yield edit;
  }
  const firstStep = steps[0]?.from ?? lines.length;
  for (let at = 0; at < firstStep; at++) {
    const was = lines[at]!;
    const scene = (now: string): Scene => ({ steps, at: -1, source, was, now });
    for (const [operator, now] of [
      ['state kept to removed', was.replace(/^(\s+(?:[\w-]+: )?[\w-]+) kept\b/, '$1 removed')],
      ['state kept to new', was.replace(/^(\s+(?:[\w-]+: )?[\w-]+) kept\b/, '$1 new')],
      ['state new to kept', was.replace(/^(\s+(?:[\w-]+: )?[\w-]+) new\b/, '$1 kept')],
      ['misspell kind', was.replace(/^(\s+(?:[\w-]+: )?)([\w-]+)( (?:kept|new)\b)/, '$1$2x$3')],
      ['misspell refrigerant', was.replace(/^(\s+refrigerant R-)(\d+)/, '$19$2')],
      ['misspell tube', was.replace(/^(\s+tube .*)(ACR|EN)\s*$/, '$1QX')],
      ['misspell file', was.replace(/^use "/, 'use "no-')],
      ['standard revision', was.replace(/^(\s+follows .* revision )(\d+)/, (_, head, n) => `${head}${Number(n) + 1}`)],
      ['plan revision', was.replace(/^( {2}revision )(\d+)/, (_, head, n) => `${head}${Number(n) + 1}`)],
      ['difference to temperature', was.replace(/Δ°([FC])/, 'deg$1')],
      ['psig to psi', was.replace(/(\d) psig/, '$1 psi')],
      ['drop unit', was.replace(/(\d) (ft|psig|lb|kg|m)\s*$/, '$1')],
      ['rating / 10', was.replace(/^(\s+rated )(\d+)/, (_, head, n) => `${head}${Number(n) / 10}`)],
      ['design x 10', was.replace(/(design-pressure low )(\d+)/, (_, head, n) => `${head}${Number(n) * 10}`)],
    ] as const) {
      if (now !== was) yield put(operator, scene(now), spliced(lines, at, 1, now), [at]);
    }
  }
}

const spliced = (
  lines: readonly string[],
  from: number,
  gone: number,
  ...put: readonly string[]
): readonly string[] => [...lines.slice(0, from), ...put, ...lines.slice(from + gone)];
