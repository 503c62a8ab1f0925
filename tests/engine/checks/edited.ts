import { expect } from 'vitest';
import type { Finding } from '../../../server/engine/finding';
import { filesOf, folders, workspaceOf } from '../../harness/plans';

export type Swap = readonly [from: string, by: string];

const texts = folders.map(filesOf);

/** A sound plan as it stands. */
export const textOf = (plan: string): string => texts.find((each) => plan in each)![plan]!;

/** What is found above information in a sound plan of which some texts, the first or every one of each, are put differently. */
export const foundIn = (plan: string, swaps: readonly Swap[], which: 'first' | 'every' = 'first'): readonly Finding[] =>
  allFoundIn(plan, swaps, which).filter(({ severity }) => severity !== 'information');

/** What is found in it, information as well. */
export function allFoundIn(
  plan: string,
  swaps: readonly Swap[],
  which: 'first' | 'every' = 'first',
): readonly Finding[] {
  const files = texts.find((each) => plan in each)!;
  let text = files[plan]!;
  for (const [from, by] of swaps) {
    expect(text, `${plan} says "${from}"`).toContain(from);
    text = which === 'every' ? text.replaceAll(from, () => by) : text.replace(from, () => by);
  }
  return workspaceOf({ ...files, [plan]: text })
    .snapshot()
    .findings(plan);
}
