import { marked } from '../course';
import { defineCheck } from '../define';
import { isCompressor } from '../plant';
import { edits } from '../support';

/**
 * What a motor burns out by and what stands outside the circuit (handbook 4.5, 13.4: contactor, lost phase): whoever checks
 * or renews one of these after the burnout has looked for its cause, whether or not the step says so.
 */
const motorControl =
  /^(check|change|renew) .*\b(contactors?|capacitors?|overloads?|starters?|relays?|phases?|fuses?|voltage|supply|motor-protect(ion|or))\b/;

/**
 * A new compressor run before anybody found why the old one burnt. Reads what the steps left beside the circuit (a contactor
 * that was changed) and the words of a hold or a check for "cause": no state of the plant shows what a person found out.
 */
export const burnoutCause = defineCheck({
  name: 'burnout-cause',
  severity: 'warning',
  title: 'The cause of the burnout is not found before the new compressor runs',
  acceptable: true,
  reads: 'words',
  ground: 'practice',
  meaning:
    'The job is a burnout, and before the start of the new compressor no hold or check asks for the cause, and nobody checks or renews a contactor, capacitor, overload, starter, relay, fuse or the supply.',
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
    if (asked || marked(whole.entries[at - 1], motorControl)) return;
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
