import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { eachStep } from '../../plan/step';
import type { Name } from '../../plan/term';
import { nearest } from '../../quantity';
import { defineCheck } from '../define';

/** A record that answers a plan or a step that is not there. Reads names. */
export const recordOfNothing = defineCheck({
  name: 'record-of-nothing',
  severity: 'error',
  title: 'A record answers what the plan does not ask',
  acceptable: false,
  reads: 'words',
  ground: 'practice',
  meaning:
    'The record names a plan that its file does not see, or an answer is headed by a label that no step of the plan bears.',
  why: 'What was done stands under a name that nobody will look for.',
  source: 'how records are read',
  wrong: {
    base: 'split',
    instead: [['  label system', '  plate: label system']],
    after:
      'record done {\n  of example revision 1\n  plat { done 16:00 by lead } # <- here\n  plate { done 16:00 by lead }\n  signed lead 17:00\n}',
  },
  right: {
    base: 'split',
    instead: [['  label system', '  plate: label system']],
    after: 'record done {\n  of example revision 1\n  plate { done 16:00 by lead }\n  signed lead 17:00\n}',
  },
  record({ declaration, view, answers, report }) {
    const of = child(declaration.bound.block, 'of');
    const name = of?.values['plan'] as Name | undefined;
    if (!of || !name) {
      report(declaration.bound, wordSpan(declaration.bound), {
        message: 'The record does not say what it is of: add "of PLAN revision N".',
      });
      return;
    }
    if (!view) {
      report(
        of,
        { from: name.from, to: name.to },
        { message: `There is no plan "${name.text}" in this file or in a file that it uses.` },
      );
      return;
    }
    const labels = [...eachStep(view.plan.steps)].flatMap((step) => step.label ?? []);
    for (const [label, bound] of answers) {
      if (labels.includes(label)) continue;
      const near = nearest(label, labels);
      const span = wordSpan(bound);
      report(bound, span, {
        message: `The plan has no step labelled "${label}"${near ? `; the nearest is "${near}"` : ''}.`,
        fixes: near
          ? [
              {
                title: `Write "${near}"`,
                safe: false,
                edits: [{ at: { file: declaration.file, item: bound.item, ...span }, text: near }],
              },
            ]
          : [],
      });
    }
  },
});
