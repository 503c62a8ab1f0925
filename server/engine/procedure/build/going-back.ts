import { eachStep, type Step } from '../../plan/step';
import type { Name } from '../../plan/term';
import { standardAtmosphere } from '../../quantity';
import { firstStage } from '../../reference/pressure-test';
import type { IfFails } from '../document';
import { type Sentence, sentence } from '../sentence';
import type { Here } from './here';
import { inBlock, type Sheet } from './sheet';
import { joined } from './words';

/** Gauge pressure at which a leak is looked for with bubbles, Pa over the atmosphere: the first stage of a test. */
export const bubblePressure = firstStage.quantity.low - standardAtmosphere;

/** What has to be let down before the crew goes back: what the failed test itself put in. */
const letDown: Readonly<Record<string, (here: Here) => Sentence>> = {
  'pressure-test': ({ ruler }) =>
    sentence(
      'find it at ',
      ruler.gauge(bubblePressure),
      ' with bubbles, let the nitrogen down to nothing, remake the joint',
    ),
  'decay-test': ({ ruler }) =>
    sentence(
      'let dry nitrogen in to ',
      ruler.gauge(0),
      ', find the leak with bubbles at ',
      ruler.gauge(bubblePressure),
      ', let down and mend it',
    ),
  evacuate: ({ ruler }) => sentence('let dry nitrogen in to ', ruler.gauge(0), ', find the leak or the water'),
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
  const first = joined([letDown[here.step.word.word]?.(here) ?? [], then ? sentence(then) : []]);
  return {
    first,
    backTo: { number, id: sheet.idOf(target) },
    most: (bound.values['most'] as number | undefined) ?? 1,
  };
}
