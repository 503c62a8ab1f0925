import type { Cause } from '../../circuit/state';
import { firstStage } from '../../reference/pressure-test';
import { standardAtmosphere } from '../../reference/table-units';
import type { Entry } from '../../walk/walk';
import { has, visitOf } from '../course';
import { defineCheck, type Whole } from '../define';
import { onlyDriers } from '../plant';
import { gauge } from '../support';
import { moveBefore, moveDown } from '../ways-out';

/** What hangs on the pressure of the circuit; the names are those that plans give such things. An alarm or a heater does not. */
const feelsPressure = /relief|transducer|pressure|bursting|rupture/;
/** What is isolated for the sake of a pressure test and hardly ever for anything else. */
const onlyForTests = /relief|transducer|bursting|rupture/;
/** A relief valve begins to weep at nine tenths of its setting. Common practice, no source. */
const weeps = 0.9;

/** Instruments and relief valves that were to be spared a test, and feel it. */
export const instrumentsUnderTest = defineCheck({
  name: 'instruments-under-test',
  severity: 'warning',
  title: 'What was isolated for the pressure test is in action at one of its stages',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  yieldsTo: ['pressure-above-rating'],
  meaning:
    'The plan puts relief valves, transducers or pressure switches out of action for the pressure test, and they are back in action before a later stage of it that is as high or higher; or they are put out of action only after it. A relief valve whose setting is stated well above the test is not meant.',
  why: 'A transducer that sees more than its range reads wrong for good, a relief valve that lifts may not close again, and the test is over.',
  source: 'federal guide specification 15652A: controls not rated for the test are removed or isolated (handbook 7.1)',
  wrong: {
    base: 'rack',
    instead: [
      [
        'pressure-test each open part to 10 psig for 15 min, bubbles on every joint',
        'bypass transducers\n    pressure-test each open part to 10 psig for 15 min, bubbles on every joint',
      ],
      [
        'pressure-test low-side, high-side to 200 psig for 60 min',
        'pressure-test low-side, high-side to 200 psig for 60 min\n    restore transducers # <- here',
      ],
    ],
  },
  right: {
    base: 'rack',
    instead: [
      [
        'pressure-test each open part to 10 psig for 15 min, bubbles on every joint',
        'bypass transducers\n    pressure-test each open part to 10 psig for 15 min, bubbles on every joint',
      ],
      ['release nitrogen outdoors', 'release nitrogen outdoors\n    restore transducers'],
    ],
  },
  plan(whole) {
    if (!whole.entries.some((entry) => entry.after.bypassed.size > 0)) return;
    const all = testsOf(whole);
    const tests = all.filter(({ isFirst }) => !isFirst);
    for (const out of timesOut(whole)) {
      // The soaped first stage tells what else it was isolated for.
      const spared = all.filter(({ at, entry }) => at > out.from && at < out.to && visitOf(entry) === visitOf(out.by));
      const inside = spared.filter(({ isFirst }) => !isFirst);
      const felt = tests.filter(
        ({ at, entry, level, parts }) =>
          !entry.before.bypassed.has(out.name) &&
          visitOf(entry) === visitOf(at < out.from ? out.by : (out.back ?? out.by)) &&
          (inside.length === 0 || isHighest(parts, level, spared)) &&
          !(out.name.includes('relief') && isSetHigher(whole, parts, level)),
      );
      const later = felt.find(({ at }) => at > out.to);
      const earlier = felt.filter(({ at }) => at < out.from).at(-1);
      const isIdle = inside.length === 0 && onlyForTests.test(out.name) && !out.isUsed;
      const many = out.name.endsWith('s');
      const [are, it, itWas] = many ? ['are', 'them', 'they were'] : ['is', 'it', 'it was'];
      if (later && out.back && (inside.length > 0 || isIdle)) {
        const most = Math.max(...inside.map(({ level }) => level));
        whole.report(out.back, {
          message: (say) =>
            `${out.name} ${are} put back here, and ${say.step(later.entry.cause)} still puts ${gauge(whole.plan, later.level)} on the circuit${inside.length > 0 ? `, after ${gauge(whole.plan, most)} that ${itWas} isolated for` : ''}: put ${it} back when the last test is let down (${source}).`,
          slot: 'what',
          root: out.back.cause,
          concerns: later.parts,
          related: [{ cause: later.entry.cause, message: 'this test reaches it' }],
          fixes: [
            moveDown('Put it back after the test is let down', out.back, 'after', (entry, all) =>
              letsDown(entry, all, later.entry.cause),
            ),
          ],
        });
      } else if (earlier && (isIdle || (inside.length > 0 && onlyForTests.test(out.name)))) {
        whole.report(out.by, {
          message: (say) =>
            `${out.name} ${are} put out of action here, after ${say.step(earlier.entry.cause)} has put ${gauge(whole.plan, earlier.level)} on ${it}: isolate ${it} before the test (${source}).`,
          slot: 'what',
          root: out.by.cause,
          concerns: earlier.parts,
          related: [{ cause: earlier.entry.cause, message: 'this test reaches it' }],
          fixes: [moveBefore('Isolate it before the test', out.by.slot.step, earlier.entry.slot.step)],
        });
      }
    }
  },
});

const source = 'federal guide specification 15652A';

interface Test {
  readonly at: number;
  readonly entry: Entry;
  readonly level: number;
  readonly parts: readonly number[];
  /** No more than the first, soaped stage. */
  readonly isFirst: boolean;
}

/** Pressure tests, but those of a drier's housing alone, where no instrument hangs. */
const testsOf = (whole: Whole): readonly Test[] =>
  whole.entries.flatMap((entry, at) =>
    entry.events.flatMap((event): Test[] => {
      if (event.type !== 'pressurises' || event.purpose !== 'test') return [];
      const stage = (firstStage.quantity.high - standardAtmosphere) * 1.01;
      const spaces = event.spaces.filter((space) => !onlyDriers(entry.before, space));
      if (spaces.length === 0) return [];
      const isFirst = event.level - whole.plan.site.atmosphere <= stage;
      return [{ at, entry, level: event.level, parts: spaces.flatMap((space) => space.parts), isFirst }];
    }),
  );

interface TimeOut {
  readonly name: string;
  readonly by: Entry;
  readonly from: number;
  /** The step that puts it back; none where nothing does, which another check tells. */
  readonly back: Entry | null;
  readonly to: number;
  /** Whether something else than a test happens meanwhile that it may be out of action for. */
  readonly isUsed: boolean;
}

/** The times during which something that feels the pressure is out of action. */
function timesOut({ entries }: Whole): readonly TimeOut[] {
  const found: TimeOut[] = [];
  entries.forEach((by, from) => {
    for (const [name, cause] of by.after.bypassed) {
      if (cause !== by.cause || !feelsPressure.test(name)) continue;
      const after = entries.findIndex((entry, at) => at > from && !entry.after.bypassed.has(name));
      const to = after < 0 ? entries.length : after;
      const isUsed = entries
        .slice(from + 1, to)
        .some((entry) =>
          (['recovers', 'pumps-down', 'evacuates', 'charges', 'starts'] as const).some((each) => has(entry, each)),
        );
      found.push({ name, by, from, back: entries[to] ?? null, to, isUsed });
    }
  });
  return found;
}

/** Whether a test reaches what others reach, and is at some part of its own as high as the highest of them. */
function isHighest(parts: readonly number[], level: number, others: readonly Test[]): boolean {
  const most = new Map<number, number>();
  for (const other of others)
    for (const part of other.parts) most.set(part, Math.max(most.get(part) ?? 0, other.level));
  return parts.some((part) => most.has(part)) && parts.some((part) => level >= (most.get(part) ?? 0) * 0.99);
}

/** Whether every relief valve that the test reaches is known to be set well above it. */
function isSetHigher({ plan }: Whole, parts: readonly number[], level: number): boolean {
  const { atmosphere } = plan.site;
  const settings = parts.flatMap((part) => plan.graph.parts[part]!.properties.relief ?? []);
  return settings.length > 0 && settings.every((each) => level - atmosphere <= (each - atmosphere) * weeps);
}

/** Whether a step lets down what a test put in. */
const letsDown = (entry: Entry, all: readonly Entry[], test: Cause): boolean =>
  has(entry, 'lets-down') && all.indexOf(entry) > all.findIndex((each) => each.cause === test);
