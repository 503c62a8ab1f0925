import type { Item, Tree } from '../../grammar/tree';
import type { Finding } from './finding';
import { type Bound, repeatedOnce } from './plan/bind';
import { faultFinding, wordSpan } from './plan/gather';

/**
 * Findings of the text itself and of its words, which no plan is needed for. Those of a statement are remembered by the
 * statement, so that an edit gathers anew only along its own spine. There may be very many: none is handed on as arguments.
 */

const ofItems = new WeakMap<Item, readonly Finding[]>();
const ofBounds = new WeakMap<Bound, readonly Finding[]>();
const none: readonly Finding[] = [];

export function syntaxFindings(tree: Tree, file: string): readonly Finding[] {
  const found: Finding[] = [];
  for (const item of tree.items) for (const each of ofItem(item, file)) found.push(each);
  return found;
}

function ofItem(item: Item, file: string): readonly Finding[] {
  const known = ofItems.get(item);
  if (known && (known.length === 0 || known[0]!.at.file === file)) return known;
  let found: Finding[] | null = null;
  for (const fault of item.faults) {
    found ??= [];
    found.push({
      name: fault.name,
      severity: 'error',
      message: fault.message,
      at: { file, item, from: fault.from, to: fault.to },
      related: [],
      fixes: [],
    });
  }
  if (item.kind === 'statement' && item.block) {
    for (const each of item.block.items) {
      for (const inner of ofItem(each, file)) (found ??= []).push(inner);
    }
  }
  ofItems.set(item, found ?? none);
  return found ?? none;
}

export function wordFindings(statements: readonly Bound[], file: string): readonly Finding[] {
  const found: Finding[] = [];
  for (const bound of statements) for (const each of ofBound(bound, file)) found.push(each);
  return found;
}

function ofBound(bound: Bound, file: string): readonly Finding[] {
  const known = ofBounds.get(bound);
  if (known && (known.length === 0 || known[0]!.at.file === file)) return known;
  let found: Finding[] | null = null;
  for (const fault of bound.faults) (found ??= []).push(faultFinding(fault, bound, file));
  for (const { again, first } of repeatedOnce(bound.block)) {
    (found ??= []).push({
      name: 'said-twice',
      severity: 'error',
      message: `"${again.word!.word}" stands twice in this block.`,
      at: { file, item: again.item, ...wordSpan(again) },
      related: [{ at: { file, item: first.item, ...wordSpan(first) }, message: 'the first one' }],
      fixes: [],
    });
  }
  for (const each of bound.block) {
    for (const inner of ofBound(each, file)) (found ??= []).push(inner);
  }
  ofBounds.set(bound, found ?? none);
  return found ?? none;
}
