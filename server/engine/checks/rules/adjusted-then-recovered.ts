import { adjustsCharge, has } from '../course';
import { defineCheck } from '../define';
import { isCompressor, touched } from '../plant';
import { moveDown } from '../ways-out';

/** A charge that is trimmed and then taken out. */
export const adjustedThenRecovered = defineCheck({
  name: 'adjusted-then-recovered',
  severity: 'warning',
  title: 'The charge is trimmed before it is recovered, and never after',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['compressor-without-refrigerant', 'part-not-as-stated'],
  meaning:
    'A step trims the charge, a later one recovers it from the compressor’s part of the circuit, and what is charged then is not trimmed again.',
  why: 'The refrigerant that was trimmed goes into the cylinder; the machine is left with a charge that nobody has read.',
  source: 'common practice (handbook 13.2: weigh in, start, tune)',
  wrong: {
    base: 'split',
    instead: [
      ['    adjust charge after 15 min\n', ''],
      ['lock-out power\n', 'adjust charge after 15 min # <- here\n    lock-out power\n'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { graph } = whole.plan;
    const trims = whole.entries.filter(adjustsCharge);
    const last = trims.at(-1);
    if (!last) return;
    const taken = whole.entries
      .slice(whole.entries.indexOf(last) + 1)
      .find((entry) =>
        entry.events.some(
          (event) =>
            event.type === 'recovers' &&
            event.spaces.some((space) =>
              space.parts.some((part) => isCompressor(graph.parts[part]!) && touched(graph, part)),
            ),
        ),
      );
    if (!taken) return;
    whole.report(last, {
      message: (say) =>
        `What is trimmed here is recovered by ${say.step(taken.cause)}, and the new charge is not trimmed: do it after the start.`,
      slot: 'what',
      related: [{ cause: taken.cause, message: 'the charge is taken out here' }],
      fixes: [
        moveDown(
          'Trim it after the start',
          last,
          'after',
          (later, all) => all.indexOf(later) > all.indexOf(taken) && has(later, 'starts'),
        ),
      ],
    });
  },
});
