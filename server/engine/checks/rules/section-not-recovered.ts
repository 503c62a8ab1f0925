import type { Space } from '../../circuit/spaces';
import { defineCheck } from '../define';
import { openLines, shutAround } from '../held-open';
import { edits, underLaw } from '../support';

/** A stretch between shut valves that recovery does not reach. */
export const sectionNotRecovered = defineCheck({
  name: 'section-not-recovered',
  severity: 'error',
  title: 'Recovery does not reach a section between shut valves',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  meaning:
    'A solenoid, expansion valve, regulator or check valve that is shut leaves a section with no port of its own full of refrigerant, and no later step recovers it.',
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
        if (event.type !== 'recovers') continue;
        const left = event.missed.filter(
          (space) =>
            !whole.entries
              .slice(at + 1)
              .some((later) => later.events.some((each) => each.type === 'recovers' && covers(each.spaces, space))),
        );
        for (const space of left) {
          const shut = shutAround(entry.before, space);
          whole.report(entry, {
            message: (say) =>
              `Recovery does not reach ${say.parts(space.parts)}${shut.length > 0 ? `, shut off by ${say.parts(shut)}` : ''}: hold the valves open, or recover that section by a port of its own${underLaw(whole.plan, 'opening')}.`,
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

const covers = (spaces: readonly Space[], missed: Space): boolean =>
  missed.parts.every((part) => spaces.some((space) => space.parts.includes(part)));
