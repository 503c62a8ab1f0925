import { eachStep, type Step } from '../../plan/step';
import type { Name } from '../../plan/terms';
import type { IfFails } from '../document';
import { type Sentence, sentence } from '../sentence';
import type { Here } from './here';
import { inBlock, type Sheet } from './sheet';

/** What has to be let down before the crew goes back: what the failed test itself put in. */
const before: Readonly<Record<string, string>> = {
  'pressure-test': 'find it at 10 psig with bubbles, let the nitrogen down to nothing, remake the joint',
  'decay-test': 'let dry nitrogen in to 0 psig, find the leak with bubbles at 10 psig, let down and mend it',
  evacuate: 'let dry nitrogen in to 0 psig, find the leak or the water',
  'acid-test': '',
};

/** The way back of a step, with the number of the step that its label stands at. */
export function ifFailsOf(sheet: Sheet, here: Here, ofBlock: readonly Step[]): IfFails | null {
  const bound = [here.step, ...ofBlock].flatMap((step) => inBlock(step, 'if-fails'))[0];
  const label = (bound?.values['label'] as Name | undefined)?.text;
  if (!bound || label === undefined) return null;
  const target = [...eachStep(sheet.plan.steps)].find((step) => step.label === label);
  const number = target ? sheet.numberOf(target) : null;
  if (!target || number === null) return null;
  const then = bound.values['then'] as string | undefined;
  const told = before[here.step.word.word] ?? '';
  const first: Sentence =
    [told, then ?? ''].filter(Boolean).length > 0 ? sentence([told, then ?? ''].filter(Boolean).join('; ')) : [];
  return {
    first,
    backTo: { number, id: sheet.idOf(target) },
    most: (bound.values['most'] as number | undefined) ?? 1,
  };
}
