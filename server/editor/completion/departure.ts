import type { Name } from '../../engine/plan/term';
import type { Word } from '../../engine/plan/vocabulary';
import { labelsOf, stepsAround } from '../names';
import type { Setting } from './proposal';

/** In a `change LABEL { … }`: the word of the step that is changed, whose clauses the block takes. */
export function verbWordOf(here: Setting): Word | undefined {
  const top = here.blocks[0];
  const label = here.blocks.at(-1)?.values['label'] as Name | undefined;
  if (top === undefined || label === undefined) return undefined;
  for (const { bound, file } of stepsAround(here.snapshot, here.path, top)) {
    const found = labelsOf(bound, file).get(label.text)?.[0]?.bound.word;
    if (found) return found;
  }
  return undefined;
}
