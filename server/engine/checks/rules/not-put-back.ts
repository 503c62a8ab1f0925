import type { Edit } from '../../finding';
import { isWaterValve } from '../../steps/valves';
import type { Entry } from '../../walk/walk';
import { has, lastBeforeLeaving, visitOf } from '../course';
import { defineCheck, type Mend, type Whole } from '../define';
import { listed } from '../listed';
import { isSafety } from '../safety-names';
import { edits } from '../support';
import { moveBefore, moveDown } from '../ways-out';

/** An alarm, switch or instrument put out of action for good, or beyond the start. */
export const notPutBack = defineCheck({
  name: 'not-put-back',
  severity: 'warning',
  title: 'Something put out of action is never put back',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  meaning:
    'An alarm, a transducer, a relief valve or a switch is bypassed or isolated, and no step restores it; or a safety or a transducer is restored only after the machine has been started; or the water is shut off while the machine runs, or not turned on before it starts. A low-pressure switch may stay out for a pump-down, or until the rest of the charge is in. For a relief valve, a pressure switch or another safety the finding is an error.',
  why: 'The machine runs without what keeps it from bursting or freezing, or the box warms up with nobody told.',
  source: 'common practice: a list of what must be restored (handbook 13.5)',
  wrong: {
    base: 'rack',
    instead: [
      [
        'close valve-s, valve-d\n    pressure-test each',
        'bypass transducers # <- here\n    close valve-s, valve-d\n    pressure-test each',
      ],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    for (const entry of whole.entries) reportWater(whole, entry);
    for (const late of putBackLate(whole)) reportLate(whole, late);
    for (const [entry, names] of neverPutBack(whole)) reportNever(whole, entry, names);
  },
});

/** What is still out of action at the end, by the step that put it so. */
function neverPutBack({ entries }: Whole): ReadonlyMap<Entry, readonly string[]> {
  const found = new Map<Entry, string[]>();
  for (const [name, cause] of entries.at(-1)?.after.bypassed ?? []) {
    const entry = entries.find((each) => each.cause === cause);
    if (entry) found.set(entry, [...(found.get(entry) ?? []), name]);
  }
  return found;
}

function reportNever(whole: Whole, entry: Entry, names: readonly string[]): void {
  const grave = names.some(isSafety);
  const water = names.every(isWaterValve);
  const is = isMany(names) ? 'are' : 'is';
  const way = `${water ? 'open' : 'restore'} ${names.join(', ')}`;
  whole.report(entry, {
    message: water
      ? `${listed(names)} ${is} shut here and never opened again: the machine starts with no water through it.`
      : `${listed(names)} ${grave ? `${isMany(names) ? 'keep' : 'keeps'} people and machine safe and ` : ''}${is} put out of action here and never restored.`,
    slot: 'what',
    severity: grave ? 'error' : 'warning',
    root: entry.slot.step,
    fixes: [
      {
        title: `Put it back: ${way}`,
        edits: (mend) => edits(putBack(mend, whole, entry, names, way)),
      },
    ],
  });
}

/** Before the machine runs again, where it needs what is out; else before anybody goes. */
function putBack(mend: Mend, { entries }: Whole, out: Entry, names: readonly string[], way: string): Edit | null {
  const later = entries.slice(entries.indexOf(out) + 1);
  const start = later.find(begins);
  const isNeeded = names.some((name) => runsWith(name) && !mayStayOut(name, later));
  return start && isNeeded
    ? mend.insertBefore(start.slot.step, way)
    : mend.insertAfter(lastBeforeLeaving(entries, out), way);
}

const begins = ({ before, after }: Entry): boolean => !before.running && after.running;

/** What a machine does not run without: a safety, a transducer, water, and what moves water or air. */
const runsWith = (name: string): boolean =>
  isSafety(name) || isWaterValve(name) || /transducers?$|fans?$|pumps?$/.test(name);

const isMany = (names: readonly string[]): boolean => names.length > 1 || names[0]!.endsWith('s');

/** Water that is turned off under a machine that runs. */
function reportWater(whole: Whole, entry: Entry): void {
  if (!entry.after.running) return;
  const names = [...entry.after.bypassed].flatMap(([name, cause]) =>
    cause === entry.cause && isWaterValve(name) ? [name] : [],
  );
  if (names.length === 0) return;
  whole.report(entry, {
    message: `${listed(names)} ${isMany(names) ? 'are' : 'is'} shut while the machine runs: a condenser without water trips on its pressure, an evaporator freezes and bursts. Stop the machine first.`,
    slot: 'what',
    root: entry.slot.step,
    concerns: [],
    fixes: [moveDown('Shut it when the machine stands', entry, 'after', ({ after }) => !after.running)],
  });
}

interface Late {
  readonly names: string[];
  /** The steps that put it out of action, start the machine, and put it back. */
  readonly out: Entry;
  readonly start: Entry;
  readonly back: Entry;
}

/** What a machine was started without, by the step that puts it back. One that waits for another visit is told where the crew goes. */
function putBackLate({ entries }: Whole): readonly Late[] {
  const found = new Map<Entry, Late>();
  entries.forEach((out, from) => {
    for (const [name, cause] of out.after.bypassed) {
      if (cause !== out.cause || !runsWith(name)) continue;
      const to = entries.findIndex((entry, at) => at > from && entry.after.bypassed.get(name) !== cause);
      const back = entries[to];
      const meanwhile = entries.slice(from + 1, Math.max(to, 0));
      const start = meanwhile.find(begins);
      if (!back || !start || visitOf(start) !== visitOf(back) || mayStayOut(name, meanwhile)) continue;
      const known = found.get(back);
      if (known) known.names.push(name);
      else found.set(back, { names: [name], out, start, back });
    }
  });
  return [...found.values()];
}

/** A low pressure is wanted in a pump-down, and comes of itself while the machine draws the rest of its charge in. */
const mayStayOut = (name: string, meanwhile: readonly Entry[]): boolean =>
  name.includes('low') &&
  meanwhile.some(
    (entry) =>
      has(entry, 'pumps-down') ||
      (entry.before.running && entry.events.some((event) => event.type === 'charges' && event.purpose === 'charge')),
  );

function reportLate(whole: Whole, { names, out, start, back }: Late): void {
  const grave = names.some(isSafety);
  const many = isMany(names);
  whole.report(back, {
    message: (say) =>
      `${listed(names)} ${many ? 'are' : 'is'} put back only here, and ${say.step(start.cause)} has run the machine without ${many ? 'them' : 'it'}: put ${many ? 'them' : 'it'} back before the start.`,
    slot: 'what',
    severity: grave ? 'error' : 'warning',
    root: back.slot.step,
    concerns: [],
    related: [
      { cause: out.cause, message: 'put out of action here' },
      { cause: start.cause, message: 'the machine starts here' },
    ],
    fixes: [moveBefore('Put it back before the start', back.slot.step, start.slot.step)],
  });
}
