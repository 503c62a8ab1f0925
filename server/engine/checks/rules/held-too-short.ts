import { contentsOfCell } from '../../circuit/settle';
import { exactly } from '../../quantity';
import { decayRules } from '../../reference/evacuation';
import { firstStage, testHold } from '../../reference/pressure-test';
import type { Entry } from '../../walk/walk';
import { statedTime, visitOf } from '../course';
import { defineCheck, type Whole } from '../define';
import { isOrAre } from '../is-are';
import { edits, shown } from '../support';

type Way = 'pressure' | 'vacuum';

/** The least of the usual times, s: no standard and no form asks for less. */
const decayRule = decayRules.find((each) => each.name === 'residential')!;
const least: Readonly<Record<Way, number>> = { pressure: testHold.quantity.low, vacuum: decayRule.time };
const line: Readonly<Record<Way, string>> = { pressure: 'for 30 min', vacuum: 'for 15 min' };

/** A proof that is over before a leak can show. */
export const heldTooShort = defineCheck({
  name: 'held-too-short',
  severity: 'warning',
  title: 'The test is held too short to prove anything',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The pressure test that proves an opened part, or its decay test, is held for less than 10 minutes, and no other test of that part at that level is longer. A first, lower stage is not asked.',
  why: 'The gas still cools after filling and the oil still gives off vapour: in a few minutes a small leak does not show on the gauge.',
  source: `pressure: ${testHold.source} (handbook 7.1); decay: ${decayRule.source} (handbook 8.1)`,
  wrong: {
    base: 'split',
    instead: [
      [
        'decay-test each open part for 15 min, rise at most 300 micron',
        'decay-test each open part for 300 s, rise at most 300 micron # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const all = proofsOf(whole);
    for (const proof of all) {
      if (proof.held >= least[proof.way] * 0.99 || proof.isCited || proof.isFirstStage) continue;
      // What a longer test proves, or a later stage is still to prove, needs nothing from this one.
      const bare = proof.parts.filter(
        (part) =>
          openedAt(proof.entry, part) !== null &&
          !all.some(
            (each) =>
              each !== proof && isBetter(each, proof) && each.parts.includes(part) && sameWork(each, proof, part),
          ),
      );
      if (bare.length === 0) continue;
      const time = exactly('time', least[proof.way]);
      const why =
        proof.way === 'pressure'
          ? 'shows a small leak: the gas still cools'
          : 'tells a leak or water from the settling of the gauge';
      whole.report(proof.entry, {
        message: (say) =>
          `${say.parts(bare)} ${isOrAre(bare.length)} held for ${shown(whole.plan, exactly('time', proof.held))} only, and nothing under ${shown(whole.plan, time)} ${why} (${proof.way === 'pressure' ? testHold.source : decayRule.source}). Hold it longer, or cite the sheet.`,
        slot: 'time',
        root: proof.entry.slot.step,
        concerns: bare,
        fixes: [
          {
            title: `Hold it ${line[proof.way]}`,
            edits: (mend) => edits(mend.replace(proof.entry.slot.step, 'time', line[proof.way])),
          },
        ],
      });
    }
  },
});

interface Proof {
  readonly way: Way;
  readonly entry: Entry;
  readonly at: number;
  readonly parts: readonly number[];
  /** Pa absolute; 0 for a vacuum, where levels do not make stages. */
  readonly level: number;
  /** s; endless where the step states no time, which is not this check's. */
  readonly held: number;
  readonly isCited: boolean;
  readonly isFirstStage: boolean;
}

const proofsOf = (whole: Whole): readonly Proof[] =>
  whole.entries.flatMap((entry, at) =>
    entry.events.flatMap((event): Proof[] => {
      if (event.type !== 'stands' && !(event.type === 'pressurises' && event.purpose === 'test')) return [];
      const way = event.type === 'stands' ? 'vacuum' : 'pressure';
      const level = event.type === 'stands' ? 0 : event.level;
      return [
        {
          way,
          entry,
          at,
          parts: event.spaces.flatMap((space) => (space.openings.length > 0 ? [] : space.parts)),
          level,
          held: event.time === null ? Number.POSITIVE_INFINITY : event.time.low + heldAfter(whole, at),
          isCited: typeof entry.slot.step.values['per'] === 'string',
          isFirstStage: way === 'pressure' && level <= firstStage.quantity.high * 1.01,
        },
      ];
    }),
  );

/** The time that later steps state while nothing has let the test down yet, s; endless overnight. */
function heldAfter({ entries }: Whole, at: number): number {
  const entry = entries[at]!;
  const space = entry.events.flatMap((event) => ('spaces' in event ? event.spaces : []))[0];
  const cell = space?.cells[0];
  if (cell === undefined) return 0;
  const held = contentsOfCell(entry.after, cell);
  let time = 0;
  for (const later of entries.slice(at + 1)) {
    const now = contentsOfCell(later.after, cell);
    if (now.gas !== held.gas || now.since !== held.since) break;
    if (visitOf(later) !== visitOf(entry)) return Number.POSITIVE_INFINITY;
    // While another section is tested, nobody reads this one's gauge.
    if (later.events.some((event) => event.type === 'pressurises')) continue;
    time += statedTime(later.slot.step, 'time');
  }
  return time;
}

const openedAt = (entry: Entry, part: number) => entry.before.parts[part]!.opened;

/** Of two tests between which the part was not opened again, one stands for the other. */
const sameWork = (a: Proof, b: Proof, part: number): boolean => openedAt(a.entry, part) === openedAt(b.entry, part);

/** Whether another test takes the proof upon itself: a later, higher stage, or one as high that is long enough. */
const isBetter = (other: Proof, one: Proof): boolean =>
  other.way === one.way &&
  ((other.at > one.at && other.level > one.level * 1.01) ||
    (other.level >= one.level * 0.99 && (other.isCited || other.held >= least[one.way] * 0.99)));
