import { type Space, spaces } from '../../circuit/spaces';
import type { Event } from '../../steps/events';
import { byHose } from '../../steps/ports';
import type { Entry } from '../../walk/walk';
import { defineCheck } from '../define';
import { openLines, shutAround } from '../held-open';
import { edits, underLaw } from '../support';

/** Refrigerant that is drawn out, or let off where the law allows it. */
type Recovery = Extract<Event, { type: 'recovers' | 'vents' }>;
const empties = (event: Event): event is Recovery => event.type === 'recovers' || event.type === 'vents';

/** A stretch between shut valves that recovery does not reach. */
export const sectionNotRecovered = defineCheck({
  name: 'section-not-recovered',
  severity: 'error',
  title: 'Recovery does not reach a section between shut valves',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  meaning:
    'A solenoid, expansion valve, regulator or check valve that is shut leaves a section with no port of its own full of refrigerant, and no later step recovers it, or lets it down where the law allows that.',
  why: 'Liquid shut in bursts the tube when it warms, or sprays out when somebody cuts a section that the gauges show empty.',
  source: '40 CFR 82.156 (handbook 2.1); trapped liquid: common practice (handbook 13.5)',
  wrong: {
    base: 'rack',
    instead: [
      ['open epr-1 by stem\n', ''],
      ['open sol-1, sol-2 by magnet\n', ''],
      ['recover system to 0 inHg', 'recover system to 0 inHg # <- here'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    whole.entries.forEach((entry, at) => {
      for (const event of entry.events) {
        if (!empties(event)) continue;
        const left = [...event.missed, ...missedAtRest(entry, event)].filter(
          (space) =>
            !whole.entries
              .slice(at + 1)
              .some((later) => later.events.some((each) => empties(each) && covers(each.spaces, space))),
        );
        const what = event.type === 'vents' ? 'What is let off here' : 'Recovery';
        for (const space of left) {
          const shut = shutAround(entry.before, space);
          whole.report(entry, {
            message: (say) =>
              `${what} does not reach ${say.parts(space.parts)}${shut.length > 0 ? `, shut off by ${say.parts(shut)}` : ''}: hold the valves open, or ${event.type === 'vents' ? 'let that section down' : 'recover that section'} by a port of its own${event.type === 'vents' ? '' : underLaw(whole.plan, 'opening')}.`,
            slot: 'what',
            concerns: space.parts,
            related: shut.map((part) => ({ part, message: 'this is shut then' })),
            fixes:
              shut.length > 0
                ? [
                    {
                      title: 'Hold these valves open before recovery',
                      edits: (mend) => edits(mend.insertBefore(entry.slot.step, ...openLines(entry.before, shut))),
                    },
                  ]
                : [],
          });
        }
      }
    });
  },
});

/**
 * Sections of what a recovery reaches on a machine that was stopped and still has power: its solenoids and regulators are
 * shut then, unless they are held open.
 */
function missedAtRest(entry: Entry, { spaces: reached, named }: Recovery): readonly Space[] {
  const { before } = entry;
  if (before.power !== 'on' || before.running) return [];
  const cells = new Set(reached.flatMap((space) => space.cells));
  const atRest = spaces({ ...before, power: 'locked-out' }).filter((space) => cells.has(space.cells[0]!));
  if (atRest.length <= reached.length) return [];
  return byHose(before.graph, atRest, named.length === before.graph.parts.length).missed;
}

const covers = (spaces: readonly Space[], missed: Space): boolean =>
  missed.parts.every((part) => spaces.some((space) => space.parts.includes(part)));
