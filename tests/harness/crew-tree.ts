import type { Line } from './scene';

/** A step, or a phase, visit or repeat with all that stands in it. */
export interface Item {
  readonly from: number;
  readonly to: number;
  readonly kind: 'step' | 'phase' | 'visit' | 'repeat';
  readonly label: string | null;
  /** The steps in it; a step holds itself. */
  readonly steps: readonly Line[];
  readonly parent: Item | null;
}

export const codeOf = (line: string): string => line.replace(/"[^"]*"/g, '""').replace(/#.*/, '');
const heading = /^\s*(?:([a-z][\w-]*): )?(phase|visit|repeat)\b.*\{\s*$/;

/** The line of the brace that closes what opens at a line. */
export function closing(lines: readonly string[], from: number): number {
  let depth = 0;
  for (let at = from; at < lines.length; at++) {
    const code = codeOf(lines[at]!);
    depth += (code.match(/\{/g) ?? []).length - (code.match(/\}/g) ?? []).length;
    if (depth <= 0) return at;
  }
  return lines.length - 1;
}

/** All steps and the blocks that they stand in, outer ones before inner ones. */
export function itemsOf(lines: readonly string[], steps: readonly Line[]): readonly Item[] {
  const found: Item[] = [];
  const parentOf = (from: number, to: number): Item | null =>
    found.filter((each) => each.kind !== 'step' && each.from < from && each.to >= to).at(-1) ?? null;
  for (let at = 0; at < lines.length; at++) {
    const match = heading.exec(codeOf(lines[at]!));
    const step = steps.find((each) => each.from === at);
    if (match) {
      const to = closing(lines, at);
      found.push({
        from: at,
        to,
        kind: match[2] as Item['kind'],
        label: match[1] ?? null,
        steps: steps.filter((each) => each.from > at && each.to < to),
        parent: parentOf(at, to),
      });
    } else if (step)
      found.push({
        from: at,
        to: step.to,
        kind: 'step',
        label: step.label,
        steps: [step],
        parent: parentOf(at, step.to),
      });
  }
  return found;
}

/** The item that stands right behind another one in the same block; what is between them is blank or a comment. */
export function behind(items: readonly Item[], item: Item, lines: readonly string[]): Item | undefined {
  const next = items.find((each) => each.from > item.to && each.parent === item.parent);
  return next && lines.slice(item.to + 1, next.from).every((line) => /^\s*(#.*)?$/.test(line)) ? next : undefined;
}

/** An item and up to `more` others right behind it; null where there are fewer. */
export function row(
  items: readonly Item[],
  first: Item,
  count: number,
  lines: readonly string[],
): readonly Item[] | null {
  const found = [first];
  while (found.length < count) {
    const next = behind(items, found.at(-1)!, lines);
    if (!next) return null;
    found.push(next);
  }
  return found;
}

/** Lines `from` to `to` taken out and put before the line `before`, all counted as they were. */
export function shifted(
  lines: readonly string[],
  from: number,
  to: number,
  before: number,
): { readonly lines: readonly string[]; readonly touched: readonly number[] } {
  const own = lines.slice(from, to + 1);
  const rest = [...lines.slice(0, from), ...lines.slice(to + 1)];
  const at = before > to ? before - own.length : before;
  return {
    lines: [...rest.slice(0, at), ...own, ...rest.slice(at)],
    touched: own.map((_, k) => at + k),
  };
}
