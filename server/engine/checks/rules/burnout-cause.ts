import { defineCheck } from '../define';
import { isCompressor } from '../plant';
import { edits } from '../support';

/**
 * A new compressor run before anybody found why the old one burnt. Reads the words of a hold or a check for "cause": no
 * state of the plant shows what a person found out.
 */
export const burnoutCause = defineCheck({
  name: 'burnout-cause',
  severity: 'warning',
  title: 'The cause of the burnout is not found before the new compressor runs',
  acceptable: true,
  reads: 'words',
  ground: 'practice',
  meaning: 'The job is a burnout, and no hold or check before the start of the new compressor asks for the cause.',
  why: 'What burnt the first compressor, a contactor, a lost phase, no oil, burns the second.',
  source: 'common practice: find and fix the cause (handbook 4.5, 13.4)',
  wrong: {
    base: 'split',
    instead: [
      ['kind changeout', 'kind changeout, burnout\n  accept suction-drier-missing because "Oil clean, no acid"'],
      ['start system', 'start system # <- here'],
      ['label system', 'acid-test system, at most 0.05 mgKOH/g\n    label system'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    if (!whole.plan.kinds.includes('burnout')) return;
    const { graph } = whole.plan;
    const fitted = whole.entries.findIndex((entry) =>
      entry.events.some(
        (event) => event.type === 'mounts' && event.parts.some((part) => isCompressor(graph.parts[part]!)),
      ),
    );
    const started = whole.entries.findIndex(
      (entry, k) => k > fitted && entry.events.some((event) => event.type === 'starts'),
    );
    // With no start after the work the machine comes on with the power.
    const at =
      started >= 0
        ? started
        : whole.entries.findIndex((entry, k) => k > fitted && !entry.before.running && entry.after.running);
    const entry = whole.entries[at];
    if (fitted < 0 || !entry) return;
    const asked = whole.entries
      .slice(0, at)
      .some(
        ({ slot: { step } }) => /^(hold|check|read|note)/.test(step.word.word) && /cause|fault|why/i.test(step.text),
      );
    if (asked) return;
    whole.report(entry, {
      message: 'The new compressor starts here and no step before asks what burnt the old one: find the cause first.',
      slot: 'what',
      fixes: [
        {
          title: 'Hold until the cause is found',
          edits: (mend) =>
            edits(mend.insertBefore(entry.slot.step, 'hold "Cause of the burnout found and put right" by lead')),
        },
      ],
    });
  },
});
