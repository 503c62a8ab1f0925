import { firstFill, firstStart, isCharge, marked } from '../course';
import { defineCheck } from '../define';
import { edits } from '../support';

/** Another refrigerant or oil in the machine and the old plate on it. */
export const labelMissing = defineCheck({
  name: 'label-missing',
  severity: 'warning',
  title: 'No label though the refrigerant or the oil changes',
  acceptable: true,
  reads: 'state',
  yieldsTo: ['other-refrigerant', 'refrigerant-never-changed'],
  ground: 'published',
  meaning:
    'The system gets another refrigerant, weighed in or in a new unit, or another oil, and no step puts a label on with refrigerant, charge, oil and date.',
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
    const { refrigerant, oil } = whole.plan.system;
    const { entries } = whole;
    const last = entries.at(-1);
    // A tag on a cylinder, or its label, says what is in the cylinder.
    if (!last || !refrigerant.before || marked(last, /^label (?!cylinder)/)) return;
    const [changed] = [refrigerant, oil].filter(({ before, after }) => before !== after);
    // A unit that brings its charge is charged by opening its valves: what everybody sees of it is the start.
    const at = entries.find(isCharge) ?? entries[firstStart(entries)] ?? entries[firstFill(entries)];
    if (!changed || !at) return;
    whole.report(at, {
      message: `${changed.after} ${changed === oil ? 'oil ' : ''}takes the place of ${changed.before} and no step labels the system.`,
      slot: 'what',
      concerns: whole.plan.graph.parts.map((part) => part.index),
      fixes: [{ title: 'Label at the end', edits: (mend) => edits(mend.insertAfter(last.slot.step, 'label system')) }],
    });
  },
});
