import { wordSpan } from '../../plan/gather';
import type { Entry } from '../../walk/walk';
import { firstStart, timeOf, visitOf } from '../course';
import { defineCheck, type Whole } from '../define';
import { isMobile } from '../equipment';
import { readyCompressors } from '../plant';
import { amount, edits } from '../support';
import { moveBefore, takeOut } from '../ways-out';

/** A machine with a sump of this size and more has a heater in it, m3 (about half a US gallon): common practice, no source. */
const heatedSump = 0.00189;
/** Before the first start: 12 to 24 h (handbook 13.1, common practice). */
const heaterTime = 12 * 3600;

/** A cold compressor started on oil full of refrigerant. */
export const heaterTooShort = defineCheck({
  name: 'heater-too-short',
  severity: 'warning',
  title: 'The crankcase heater is not on long enough before the start',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['refrigerant-not-stated'],
  meaning:
    'A compressor with a sump of oil, or one whose controls the plan gives power for a stated time, is started after a new charge, and its heater had power for less than 12 hours before; or the hours that the plan gives it come after the start, before a lock-out that ends them, or before the new compressor is in place. Power that comes back twice in a row, as if the first were meant for the heater, is for information. A machine on wheels (`equipment transport` or `vehicle`) has no heater unless the plan gives it hours.',
  why: 'Liquid in the cold oil boils at the start, foams the oil out and breaks bearings and valves.',
  source: 'at least 12 to 24 h before the start: common practice (handbook 13.1)',
  wrong: {
    base: 'rack',
    instead: [
      ['energise controls for 24 h', 'energise controls for 1 h'],
      ['start system', 'start system # <- here'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const at = firstStart(whole.entries);
    switchedOff(whole, at);
    const entry = whole.entries[at];
    if (!entry) return;
    if (isLate(whole, at)) return;
    let off = -1;
    whole.entries.slice(0, at).forEach((each, k) => {
      if (each.after.power === 'locked-out') off = k;
    });
    const compressor = isMobile(whole.plan)
      ? undefined
      : readyCompressors(entry.before).find((part) => (part.properties.oil?.volume ?? 0) >= heatedSump);
    const under = whole.entries.slice(off + 1, at);
    const powers = under.filter((each) => each.slot.step.word.word === 'energise');
    // Whoever gives the controls power for a stated time before a start warms a sump, however small it is.
    const [short] = powers.filter((each) => timeOf(each, 'time') > 0).slice(-1);
    const warmed = compressor ?? (short && readyCompressors(entry.before)[0]);
    if (off >= 0 && !warmed) poweredTwice(whole, under);
    if (off < 0 || !warmed || powers.some((each) => typeof each.slot.step.values['per'] === 'string')) return;
    // What stood there before, or a place that is empty, is warmed in vain.
    const now = entry.before.parts[warmed.index]!;
    const warms = ({ before }: Entry): boolean => {
      const then = before.parts[warmed.index]!;
      return then.mounted === now.mounted && then.setBy === now.setBy;
    };
    const time = under.filter(warms).reduce((sum, each) => sum + timeOf(each, 'time'), 0);
    if (time >= heaterTime * 0.99) return;
    // The crew is away over night between two visits, and the heater stays on.
    if (short && visitOf(short) !== visitOf(entry)) return;
    const power = under[0] ?? entry;
    const vain = short && !warms(short) ? short : undefined;
    whole.report(entry, {
      message: (say) =>
        `${say.part(warmed.index)} starts after ${time > 0 ? amount(whole.plan, 'time', time) : 'no stated time'} with its heater on: give the controls power for at least 12 h ${vain ? 'when it is in place' : 'first'} (common practice, no source; handbook 13.1).`,
      slot: 'what',
      related: short ? [{ cause: short.cause, message: 'its heater gets power here' }] : [],
      fixes: [
        vain
          ? moveBefore('Give the controls power when it is in place', vain.slot.step, powerOn(whole, at).slot.step)
          : short
            ? {
                title: 'Give the controls power for 24 h',
                edits: (mend) => edits(mend.replace(short.slot.step, 'time', 'for 24 h')),
              }
            : {
                title: 'Give the controls power for 24 h before the power comes back',
                edits: (mend) => edits(mend.insertBefore(power.slot.step, 'energise controls for 24 h')),
              },
      ],
    });
  },
});

/** The step that gives the machine its power before it starts, or the start itself. */
const powerOn = ({ entries }: Whole, start: number): Entry =>
  entries
    .slice(0, start)
    .reverse()
    .find(({ before, after }) => before.power !== 'on' && after.power === 'on') ?? entries[start]!;

/** Power that comes back in two steps one after the other, of which the first was to warm the sump. */
function poweredTwice(whole: Whole, under: readonly Entry[]): void {
  const at = under.findIndex(
    (each, k) => gives(each) && each.before.power === 'on' && each.before.powerBy === under[k - 1]?.cause,
  );
  const [first, again] = [under[at - 1], under[at]];
  if (!first || !again || !gives(first)) return;
  whole.report(first, {
    message: (say) =>
      `Power comes back here and once more at ${say.step(again.cause)}, and the machine starts cold: if the first is to warm the sump, give the controls alone power for at least 12 h; else leave one of the two out.`,
    slot: 'what',
    severity: 'information',
    root: 'twice',
    related: [{ cause: again.cause, message: 'the same again' }],
    fixes: [
      {
        title: 'Give the controls power for 24 h instead',
        edits: (mend) => {
          const { bound, spans } = first.slot.step;
          return mend.write(first.slot.step, wordSpan(bound).from, spans['what']!.to, 'energise controls for 24 h');
        },
      },
      takeOut(again.slot.step),
    ],
  });
}

const gives = ({ events }: Entry): boolean => events.some((event) => event.type === 'powers' && event.to === 'on');

/** Hours with the heater on that come after the start they are meant for. */
function isLate(whole: Whole, at: number): boolean {
  const entry = whole.entries[at]!;
  const late = whole.entries.slice(at + 1).filter((each) => given(each) && each.before.running);
  for (const each of late)
    whole.report(each, {
      message: (say) =>
        `The heater gets its ${amount(whole.plan, 'time', timeOf(each, 'time'))} after ${say.step(entry.cause)} has started the machine: give the controls power before.`,
      slot: 'what',
      root: 'late',
      related: [{ cause: entry.cause, message: 'the machine starts here' }],
      fixes: [moveBefore('Give the controls power before the start', each.slot.step, powerOn(whole, at).slot.step)],
    });
  return late.length > 0;
}

/** Whether a step gives the controls power for hours. */
const given = (entry: Entry): boolean =>
  entry.after.marks.get('energise controls') === entry.cause && timeOf(entry, 'time') >= 3600;

/** Hours with the heater on before power is locked out and refrigerant comes out warm nothing at the start. */
function switchedOff(whole: Whole, start: number): void {
  const { entries } = whole;
  const end = start < 0 ? entries.length : start;
  const at = entries.findIndex((entry, k) => k < end && given(entry));
  const early = entries[at];
  if (!early || entries.slice(at + 1, end).some(given)) return;
  const off = entries
    .slice(at + 1, end)
    .find((entry) => entry.before.power !== 'locked-out' && entry.after.power === 'locked-out');
  if (!off) return;
  whole.report(early, {
    message: (say) =>
      `${say.step(off.cause)} switches the heater off again: give the controls their ${amount(whole.plan, 'time', timeOf(early, 'time'))} after that, before the start.`,
    slot: 'what',
    root: 'switched off',
    related: [{ cause: off.cause, message: 'the power goes off here' }],
  });
}
