import { behind, type Item, itemsOf, row, shifted } from './crew-tree';
import type { Line } from './scene';
import type { Made } from './step-edits';

const all = (items: readonly Item[]): readonly Line[] => items.flatMap((each) => each.steps);
const without = (lines: readonly string[], from: number, to: number): readonly string[] => [
  ...lines.slice(0, from),
  ...lines.slice(to + 1),
];
const bare = (line: string): string => line.replace(/^(\s*)[a-z][\w-]*: /, '$1');
const indentOf = (line: string): string => /^\s*/.exec(line)![0];

/** What a tired author does to several steps at once: whole blocks left out, moved, exchanged; ends of blocks moved. */
export function* blockEdits(lines: readonly string[], steps: readonly Line[]): Generator<Made> {
  const items = itemsOf(lines, steps);
  const base = (first: Item): { at: number; was: string } => ({
    at: steps.indexOf(first.steps[0]!),
    was: lines[first.from]!,
  });
  const move = (operator: string, group: readonly Item[], past: readonly Item[]): Made => {
    const down = past[0]!.from > group[0]!.from;
    const before = down ? past.at(-1)!.to + 1 : past[0]!.from;
    return {
      ...base(group[0]!),
      operator,
      now: `${down ? 'behind' : 'before'} ${(down ? past.at(-1)! : past[0]!).steps[0]?.plain ?? 'block'}`,
      ...shifted(lines, group[0]!.from, group.at(-1)!.to, before),
      past: all(past),
      group: all(group),
    };
  };
  for (const item of items) {
    if (item.steps.length === 0) continue;
    for (const count of [2, 3, 4]) {
      const group = row(items, item, count, lines);
      if (!group || group.some((each) => each.kind !== 'step')) continue;
      // A block that loses all its steps goes as a whole, below.
      if (item.parent && all(group).length === item.parent.steps.length) continue;
      yield {
        ...base(item),
        operator: `delete ${count} steps`,
        now: '',
        lines: without(lines, item.from, group.at(-1)!.to),
        touched: [item.from - 1, item.from],
        group: all(group),
      };
      if (count === 4) continue;
      for (const by of [1, 3]) {
        const past = behind(items, group.at(-1)!, lines);
        const far = past && row(items, past, by, lines);
        if (!far) continue;
        yield move(`move ${count} steps down ${by}`, group, far);
        // Past three upwards is the same as three moved down past these.
        if (by === 3 && far.every((each) => each.kind === 'step')) yield move(`move 3 steps up ${count}`, far, group);
      }
    }
    if (item.kind === 'step') continue;
    yield {
      ...base(item),
      operator: `delete ${item.kind}`,
      now: '',
      lines: without(lines, item.from, item.to),
      touched: [item.from - 1, item.from],
      group: item.steps,
    };
    const next = behind(items, item, lines);
    if (next?.steps.length)
      yield move(next.kind === 'step' ? `${item.kind} past a step` : 'blocks exchanged', [item], [next]);
    const before = items.find((each) => behind(items, each, lines) === item);
    if (before?.kind === 'step') yield move(`${item.kind} before a step`, [item], [before]);
    yield* boundary(lines, steps, items, item);
  }
  yield* copies(lines, steps);
  yield* pairs(lines, steps);
}

/** A block that ends one step earlier or later, or begins so; the order of the steps stays. */
function* boundary(
  lines: readonly string[],
  steps: readonly Line[],
  items: readonly Item[],
  block: Item,
): Generator<Made> {
  const inside = items.filter((each) => each.parent === block);
  const next = behind(items, block, lines);
  const put = (operator: string, item: Item, before: number): Made => ({
    operator: `${block.kind}: ${operator}`,
    at: steps.indexOf(item.steps[0]!),
    was: lines[item.from]!,
    now: block.label ? `${operator} of ${block.label}` : operator,
    ...shifted(lines, item.from, item.to, before),
    group: item.steps,
  });
  if (inside.length > 1) {
    const [first, last] = [inside[0]!, inside.at(-1)!];
    if (last.kind === 'step')
      yield next && next.kind === block.kind
        ? put('last into the next', last, next.from + 1)
        : put('last left outside', last, block.to + 1);
    if (first.kind === 'step') yield put('first left outside', first, block.from);
  }
  if (next?.kind === 'step') yield put('next taken in', next, block.to);
  if (next && next.kind === block.kind) {
    const [first, second] = items.filter((each) => each.parent === next);
    if (first?.kind === 'step' && second) yield put('first of the next taken in', first, block.to);
  }
  if (block.kind === 'phase')
    yield {
      operator: 'phase heading dropped',
      at: steps.indexOf(block.steps[0]!),
      was: lines[block.from]!,
      now: '',
      lines: lines.filter((_, at) => at !== block.from && at !== block.to),
      touched: [block.from],
      group: [],
    };
}

/** A step that is copied from another place, without its label and block. */
function* copies(lines: readonly string[], steps: readonly Line[]): Generator<Made> {
  for (const [at, step] of steps.entries())
    for (const by of [-9, -4, 4, 9]) {
      const other = steps[at + by];
      if (!other) continue;
      const copy = indentOf(lines[other.from]!) + bare(lines[step.from]!).trim().replace(/ ?\{$/, '');
      yield {
        operator: by < 0 ? 'copied up' : 'copied down',
        at,
        was: lines[step.from]!,
        now: `also behind ${other.plain}`,
        lines: [...lines.slice(0, other.to + 1), copy, ...lines.slice(other.to + 1)],
        touched: [other.to + 1, step.from + (by < 0 ? 1 : 0)],
        past: by < 0 ? steps.slice(at + by + 1, at) : steps.slice(at + 1, at + by + 1),
        group: [step],
      };
    }
}

const pairsOf: readonly (readonly [string, string])[] = [
  ['lock-out', 'restore'],
  ['close', 'open'],
  ['open', 'close'],
  ['open', 'return'],
  ['cap', 'uncap'],
  ['plug', 'unplug'],
  ['bypass', 'restore'],
  ['wrap', 'unwrap'],
  ['crimp', 'trim'],
  ['recover', 'prove-zero'],
  ['flush', 'purge'],
  ['disconnect', 'connect'],
  ['place', 'connect'],
  ['pressure-test', 'evacuate'],
  ['pressure-test', 'release'],
  ['evacuate', 'decay-test'],
  ['decay-test', 'charge'],
  ['charge', 'start'],
  ['start', 'adjust'],
  ['lock-out', 'recover'],
  ['release', 'evacuate'],
];

/** Two steps that belong together, each written where the other should stand. */
function* pairs(lines: readonly string[], steps: readonly Line[]): Generator<Made> {
  for (const [at, step] of steps.entries())
    for (const [first, second] of pairsOf) {
      if (step.verb !== first) continue;
      const to = steps.findIndex((each, k) => k > at && each.verb === second);
      const other = steps[to];
      if (!other || step.to !== step.from || other.to !== other.from) continue;
      const put = (line: string, into: string): string => indentOf(into) + line.trim();
      yield {
        operator: 'pair inverted',
        at,
        was: lines[step.from]!,
        now: `changed places with ${other.plain}`,
        lines: lines.map((line, k) =>
          k === step.from ? put(lines[other.from]!, line) : k === other.from ? put(lines[step.from]!, line) : line,
        ),
        touched: [step.from, other.from],
        past: steps.slice(at + 1, to + 1),
        group: [step],
      };
    }
}
