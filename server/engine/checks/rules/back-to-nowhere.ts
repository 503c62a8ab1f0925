import { children } from '../../plan/bind';
import { eachStep, type Step } from '../../plan/step';
import type { Name } from '../../plan/term';
import { nearest } from '../../quantity';
import { defineCheck } from '../define';

/** Where a crew is sent back to. It reads labels: whether one comes before another is all there is to know. */
export const backToNowhere = defineCheck({
  name: 'back-to-nowhere',
  severity: 'error',
  title: 'A failed step leads back to no earlier step',
  acceptable: false,
  reads: 'words',
  ground: 'practice',
  meaning: '`if-fails back to` names a label that no step bears, or that stands behind the step that failed.',
  why: 'The crew stands there with a failed test and a sheet that does not say where to go on.',
  source: 'how plans are read',
  wrong: {
    base: 'split',
    instead: [
      [
        'decay-test each open part for 15 min, rise at most 300 micron',
        'decay-test each open part for 15 min, rise at most 300 micron {\n    if-fails back to evacuation, at most 3 times # <- here\n  }',
      ],
      ['  evacuate each', '  evacuate: evacuate each'],
    ],
  },
  right: {
    base: 'split',
    instead: [
      [
        'decay-test each open part for 15 min, rise at most 300 micron',
        'decay-test each open part for 15 min, rise at most 300 micron {\n    if-fails back to evacuate, at most 3 times\n  }',
      ],
      ['  evacuate each', '  evacuate: evacuate each'],
    ],
  },
  plan(whole) {
    const order = [...eachStep(whole.plan.steps)];
    const place = new Map<string, number>();
    order.forEach((step, index) => {
      if (step.label && !place.has(step.label)) place.set(step.label, index);
    });
    order.forEach((step: Step, index) => {
      for (const back of children(step.bound.block, 'if-fails')) {
        const label = back.values['label'] as Name | undefined;
        if (!label) continue;
        const at = place.get(label.text);
        if (at !== undefined && at <= index) continue;
        const left = whole.plan.departures.find(
          (each) => each.label === label.text && (each.kind === 'skip' || each.kind === 'replace'),
        );
        if (at === undefined && left) {
          whole.reportAt(
            left.bound,
            left.bound.spans['label'] ?? { from: 0, to: 1 },
            {
              message: `"${step.text}" goes back to "${label.text}" if it fails, and this leaves that step out: give the label to the step that stands in its place, or change where it goes back to.`,
              root: left,
              related: [{ bound: back, file: step.file, message: 'goes back to it' }],
            },
            left.file,
          );
          continue;
        }
        const earlier = order.slice(0, index + 1).flatMap((each) => each.label ?? []);
        const near = nearest(label.text, earlier);
        whole.reportAt(
          back,
          { from: label.from, to: label.to },
          {
            message:
              at === undefined
                ? `There is no step labelled "${label.text}"${near ? `; the nearest is "${near}"` : ''}.`
                : `"${label.text}" comes after this step: a failed step leads back to an earlier one.`,
            ...(near && {
              fixes: [
                {
                  title: `Write "${near}"`,
                  edits: () => [
                    { at: { file: step.file, item: back.item, from: label.from, to: label.to }, text: near },
                  ],
                },
              ],
            }),
          },
          step.file,
        );
      }
    });
  },
});
