import type { Space } from '../../circuit/spaces';
import type { Selector } from '../../plan/selection';
import type { Event } from '../../steps/events';
import { byHose } from '../../steps/ports';
import type { Entry } from '../../walk/walk';
import { defineCheck } from '../define';
import { openLines, shutAround } from '../held-open';
import { insertBefore } from '../ways-out';

type Test = Extract<Event, { type: 'pressurises' }>;

/** A stretch between shut valves that the nitrogen of a test does not get to. */
export const sectionNotTested = defineCheck({
  name: 'section-not-tested',
  severity: 'warning',
  title: 'The test does not reach a section between shut valves',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: [
    'section-not-evacuated',
    'section-not-recovered',
    'valve-left-shut',
    'joint-left-open',
    'valve-without-power',
  ],
  meaning:
    'A solenoid, a regulator or a motor valve that is shut at this step keeps the nitrogen from a section that was opened and has no port of its own, and no other test reaches it.',
  why: 'Its joints are believed tight, and nobody has had pressure on them: they leak when the charge is in.',
  source: 'common practice: what was opened is tested, valves held open for it (handbook 7.1, 13.5)',
  wrong: {
    base: 'rack',
    instead: [
      ['close valve-s, valve-d\n', 'return sol-1, epr-1 to control\n    close valve-s, valve-d\n'],
      ['to 10 psig for 15 min, bubbles on every joint', 'to 10 psig for 15 min, bubbles on every joint # <- here'],
      [
        'open sol-1, sol-2 by magnet\n    evacuate',
        'open sol-1, sol-2 by magnet\n    open epr-1 by stem\n    evacuate',
      ],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const tests = whole.entries.flatMap((entry) =>
      entry.events.flatMap((event) =>
        event.type === 'pressurises' && event.purpose === 'test'
          ? [{ entry, level: event.level, ...byTest(entry, event) }]
          : [],
      ),
    );
    for (const { entry, level, missed } of tests) {
      for (const space of missed) {
        const opened = space.parts.filter((part) => entry.before.parts[part]!.opened !== null);
        if (opened.length === 0) continue;
        // What hands have shut off was meant to be; a new unit's lines have the ports of its valves.
        const shut = shutAround(entry.before, space).filter(
          (part) => whole.plan.graph.parts[part]!.kind.shuts !== 'hand',
        );
        if (shut.length === 0) continue;
        const reaches = tests.some(
          (test) =>
            test.level >= level * 0.99 && opened.every((part) => test.reached.some((one) => one.parts.includes(part))),
        );
        if (reaches) continue;
        whole.report(entry, {
          message: (say) =>
            `The nitrogen does not reach ${say.parts(space.parts)}, shut off by ${say.parts(shut)}: hold ${shut.length > 1 ? 'them' : 'it'} open for the test, or put a hose on it.`,
          slot: 'what',
          root: space.parts.join(),
          concerns: space.parts,
          related: [
            ...shut.map((part) => ({ part, message: 'this is shut then' })),
            ...openedLater(whole.entries, entry, shut).map(({ cause }) => ({ cause, message: 'held open only here' })),
          ],
          fixes: [
            insertBefore('Hold these valves open for the test', entry.slot.step, ...openLines(entry.before, shut)),
          ],
        });
      }
    }
  },
});

/** Which sections of a test its hoses get to. */
function byTest({ before, slot }: Entry, { spaces }: Test): { reached: readonly Space[]; missed: readonly Space[] } {
  const what = slot.step.values['what'] as readonly Selector[] | undefined;
  const isSystem = what?.some(({ noun }) => noun === 'system') ?? true;
  return byHose(
    before.graph,
    spaces.filter((space) => space.openings.length === 0),
    isSystem,
  );
}

/** The first step after another one that opens one of these valves. */
const openedLater = (entries: readonly Entry[], entry: Entry, shut: readonly number[]): readonly Entry[] =>
  entries
    .slice(entries.indexOf(entry) + 1)
    .filter(({ before, after }) =>
      shut.some((part) => before.parts[part]!.position !== 'open' && after.parts[part]!.position === 'open'),
    )
    .slice(0, 1);
