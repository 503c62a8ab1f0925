import { isCharge, marked } from '../course';
import { defineCheck } from '../define';
import { edits } from '../support';

/** Another refrigerant in the machine and the old plate on it. */
export const labelMissing = defineCheck({
  name: 'label-missing',
  severity: 'warning',
  title: 'No label though the refrigerant changes',
  acceptable: true,
  reads: 'state',
  yieldsTo: ['other-refrigerant'],
  ground: 'published',
  meaning: 'The system gets another refrigerant and no step puts a label on with refrigerant, charge, oil and date.',
  why: 'The next crew tops up with the gas on the old plate: a mixture that nobody can recover for use, and with a flammable gas a danger.',
  source: 'mechanical codes and equipment standards, from memory (handbook 13.1)',
  wrong: {
    base: 'split',
    instead: [
      ['    label system\n', ''],
      ['charge system', 'charge system # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { before, after } = whole.plan.system.refrigerant;
    const charge = whole.entries.find(isCharge);
    const last = whole.entries.at(-1);
    if (!charge || !last || !before || before === after || marked(last, /^(label|tag) /)) return;
    whole.report(charge, {
      message: `${after} takes the place of ${before} and no step labels the system.`,
      slot: 'what',
      concerns: whole.plan.graph.parts.map((part) => part.index),
      fixes: [{ title: 'Label at the end', edits: (mend) => edits(mend.insertAfter(last.slot.step, 'label system')) }],
    });
  },
});
