import { children } from '../../plan/bind';
import type { Plan } from '../../plan/plan';
import type { Name } from '../../plan/terms';
import { waysBack } from '../../takeoff/rounds';
import { walkBack } from '../../walk/back';
import type { Entry } from '../../walk/walk';
import { type Check, defineCheck, type Here, type Report } from '../define';
import { chargeStillIn } from './charge-still-in';
import { compressorWithoutRefrigerant } from './compressor-without-refrigerant';
import { flushNoOutlet } from './flush-no-outlet';
import { lineNotDisconnected } from './line-not-disconnected';
import { openUnderPressure } from './open-under-pressure';
import { pressureAboveRating } from './pressure-above-rating';
import { pumpOntoPressure } from './pump-onto-pressure';
import { refrigerantVented } from './refrigerant-vented';
import { torchHazard } from './torch-hazard';
import { workWithoutLockOut } from './work-without-lock-out';

/** What may go wrong only on the second time round, the gravest first. */
const looked: readonly Check[] = [
  openUnderPressure,
  torchHazard,
  refrigerantVented,
  chargeStillIn,
  workWithoutLockOut,
  pumpOntoPressure,
  pressureAboveRating,
  compressorWithoutRefrigerant,
  lineNotDisconnected,
  flushNoOutlet,
];

/** What breaks on a way back: the step, gone through again, and what is found at it. */
interface Broken {
  readonly entry: Entry;
  readonly report: Report;
}

/** A way back is walked once for the steps that it leads over. */
const walked = new WeakMap<
  Entry,
  { readonly head: Plan['head']; readonly over: readonly Entry[]; readonly broken: Broken | null }
>();

/** Going back after a failed test, over steps that what stands there by then does not suit. */
export const wayBackUnsafe = defineCheck({
  name: 'way-back-unsafe',
  severity: 'error',
  title: 'The way back after a failed step leads into a hazard',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: looked.map((each) => each.name),
  meaning:
    'If this step fails, the crew lets down what the test put in and goes back. At one of the steps that it then goes through again, the plant stands as that step must not meet it, though it was well the first time: refrigerant let in meanwhile, power back, a line already closed.',
  why: 'Nobody rehearses the way back; it is gone in a hurry, and the sheet is trusted.',
  source: 'common practice (handbook 2.1, 11, 13.1: the same rules hold the second time)',
  wrong: {
    base: 'split',
    instead: [
      ['  connect each kept', '  close-up: connect each kept'],
      [
        'charge system\n',
        'charge system\n  read pressure of system {\n    if-fails back to close-up, at most 2 times # <- here\n  }\n',
      ],
    ],
  },
  right: {
    base: 'split',
    instead: [
      ['  connect each kept', '  close-up: connect each kept'],
      [
        'pressure-test each open part to 450 psig for 30 min',
        'pressure-test each open part to 450 psig for 30 min {\n    if-fails back to close-up, at most 2 times\n  }',
      ],
    ],
  },
  plan(whole) {
    for (const { from, to, step } of waysBack(whole.entries)) {
      const broken = brokenOn(whole.plan, whole.entries, to, from);
      const back = children(step.bound.block, 'if-fails')[0];
      const label = back?.values['label'] as Name | undefined;
      if (!broken || !back || !label) continue;
      const { entry, report } = broken;
      whole.reportAt(
        back,
        { from: label.from, to: label.to },
        {
          message: (say) =>
            `When the crew goes back from here, ${say.step(entry.cause)} meets another state than the first time: ${typeof report.message === 'string' ? report.message : report.message(say)}`,
          root: step,
          ...(report.concerns && { concerns: report.concerns }),
          related: [{ cause: entry.cause, message: 'it breaks here the second time' }, ...(report.related ?? [])],
        },
        step.file,
      );
    }
  },
});

function brokenOn(plan: Plan, entries: readonly Entry[], to: number, from: number): Broken | null {
  const failed = entries[from]!;
  const known = walked.get(failed);
  const over = entries.slice(to, from + 1);
  if (known?.head === plan.head && known.over.length === over.length && known.over.every((each, k) => each === over[k]))
    return known.broken;
  const again = walkBack(plan, entries, to, from);
  let broken: Broken | null = null;
  for (let at = 0; at < again.length && !broken; at++) {
    const entry = again[at]!;
    for (const check of looked) {
      const report = foundBy(check, plan, entry);
      if (!report || foundBy(check, plan, over[at]!)) continue;
      broken = { entry, report };
      break;
    }
  }
  walked.set(failed, { head: plan.head, over, broken });
  return broken;
}

/** What a check finds at one step of a walk; the first thing, if it is no mere information. */
function foundBy(check: Check, plan: Plan, entry: Entry): Report | null {
  let found: Report | null = null;
  const here: Here = {
    plan,
    entry,
    step: entry.slot.step,
    before: entry.before,
    after: entry.after,
    events: (type) =>
      entry.events.filter((event): event is Extract<typeof event, { type: typeof type }> => event.type === type),
    per: (entry.slot.step.values['per'] as string | undefined) ?? null,
    report: (report) => {
      if ((report.severity ?? check.severity) !== 'information') found ??= report;
    },
  };
  check.step?.(here);
  return found;
}
