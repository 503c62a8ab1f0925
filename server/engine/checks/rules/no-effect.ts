import { kindNamed } from '../../circuit/kinds';
import type { Selector } from '../../plan/selection';
import { membersOf } from '../../walk/targets';
import { defineCheck, type Here } from '../define';
import { edits } from '../support';

/** Good practice repeats these; a plan that does them once more is never told off. */
const never = new Set(['pressure-test', 'evacuate', 'break-vacuum', 'decay-test']);

/** A proof before anything is opened, or of a vacuum where there is none, is no repetition. */
const idle = (here: Here): boolean =>
  here.step.word.word === 'decay-test' || here.before.parts.every((part) => part.opened === null);

/** It names something that there is not, and is told of that; a role without a part in this job is no such name, nor is the gas that is let down. */
const misnamed = ({ step, plan }: Here): boolean =>
  Array.isArray(step.values['what']) &&
  (step.values['what'] as readonly Selector[]).some(
    ({ of, noun }) =>
      of.length === 0 &&
      noun !== 'nitrogen' &&
      membersOf(plan.graph, noun) === null &&
      !(kindNamed(noun) && step.file !== plan.file),
  );

/** A step after which everything is as it was. */
export const noEffect = defineCheck({
  name: 'no-effect',
  severity: 'information',
  title: 'A step changes nothing',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['joint-left-open', 'part-not-as-stated', 'decay-test-missing'],
  meaning:
    'What the step does is done already, or there is nothing for it to act on. Nitrogen breaks, extra tests and repeated evacuations are never meant; a test before anything was opened is. A flush or a purge that meets no line, or a decay test of what does not stand under vacuum, is a warning; so is undoing joints whose ends were flushed or closed before, since another step had them apart.',
  why: 'Often a sign that the step stands in the wrong place, or names the wrong part.',
  source: 'common practice',
  wrong: {
    base: 'split',
    instead: [['crimp each kept line', 'trim each kept line # <- here\n    crimp each kept line']],
  },
  right: { base: 'split' },
  step(here) {
    const [event] = here.events('no-effect');
    if (!event || (never.has(here.step.word.word) && !event.grave && !idle(here)) || misnamed(here)) return;
    here.report({
      message: `This changes nothing: ${event.why}.`,
      ...(event.grave && { severity: 'warning' as const }),
      concerns: event.parts ?? [],
      // Whatever is done to a part that is not there has one cause.
      ...(event.grave && event.parts && { root: `off ${event.parts.join()}` }),
      fixes: [{ title: 'Take the step out', edits: (mend) => edits(mend.remove(here.step)) }],
    });
  },
});
