import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { eachStep, type Step } from '../../plan/step';
import { nearest } from '../../quantity';
import { defineCheck } from '../define';
import { listed } from '../listed';

/** Headings, and the step that is the record itself, are not answered. */
const unanswered = new Set(['phase', 'visit', 'record']);

/** A labelled step or a hold that the record does not answer. */
export const recordGap = defineCheck({
  name: 'record-gap',
  severity: 'warning',
  title: 'The record leaves a step or a signature out',
  acceptable: false,
  noFix: 'What was done, when and by whom, only the crew can say.',
  reads: 'words',
  ground: 'practice',
  meaning:
    'A labelled step of the plan has no answer in the record, a hold has no signature, or nobody has signed at the end.',
  why: 'Nobody can show later that it was done; for a leak test, a recovery or a charge the law asks for it.',
  source: 'common practice; 40 CFR 82.166 and 84.106 on records (handbook 2.1)',
  wrong: {
    base: 'split',
    instead: [
      ['  prove-zero system', '  zero: prove-zero system'],
      ['  label system', '  plate: label system'],
    ],
    after: 'record done { # <- here\n  of example revision 1\n  plate { done 16:00 by lead }\n  signed lead 17:00\n}',
  },
  right: {
    base: 'split',
    instead: [['  prove-zero system', '  zero: prove-zero system']],
    after: 'record done {\n  of example revision 1\n  zero { done 09:00 by lead }\n  signed lead 17:00\n}',
  },
  record({ declaration, view, answers, report }) {
    if (!view) return;
    const { bound } = declaration;
    const asked = [...eachStep(view.plan.steps)].filter(
      (step) => step.label !== null && !unanswered.has(step.word.word),
    );
    const labels = asked.map((step) => step.label!);
    // An answer under a misspelt label is one mistake, and the other check names it.
    const misspelt = new Set(
      [...answers.keys()].flatMap((label) => (labels.includes(label) ? [] : (nearest(label, labels) ?? []))),
    );
    const missing = asked.filter((step) => !answers.has(step.label!) && !misspelt.has(step.label!));
    if (missing.length > 0) {
      report(bound, bound.spans['name'] ?? wordSpan(bound), {
        message: `The record has no answer for ${listed(missing.map((step) => step.label!))}: add ${missing.length > 1 ? 'them' : 'it'}, or say "departed because …".`,
        related: missing.map((step) => related(step)),
      });
    }
    for (const step of asked) {
      const answer = answers.get(step.label!);
      if (step.word.word !== 'hold' || !answer || child(answer.block, 'signed') || child(answer.block, 'departed'))
        continue;
      report(answer, wordSpan(answer), {
        message: `"${step.label}" is a hold point and nobody has signed it: add "signed ${String(step.values['by'] ?? 'lead')} TIME".`,
        related: [related(step)],
      });
    }
    if (!child(bound.block, 'signed'))
      report(bound, bound.spans['name'] ?? wordSpan(bound), {
        message: 'The record is not signed: add "signed lead TIME" at its end.',
      });
  },
});

const related = (step: Step) => ({
  at: { file: step.file, item: step.bound.item, ...(step.bound.label ?? wordSpan(step.bound)) },
  message: `"${step.label}" is asked here`,
});
