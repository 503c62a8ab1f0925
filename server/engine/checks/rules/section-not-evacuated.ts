import { contentsOfCell } from '../../circuit/settle';
import type { Space } from '../../circuit/spaces';
import type { Plant } from '../../circuit/state';
import { defineCheck } from '../define';

/** A stretch between shut valves that the pump does not reach. */
export const sectionNotEvacuated = defineCheck({
  name: 'section-not-evacuated',
  severity: 'warning',
  title: 'The pump does not reach a section between shut valves',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['section-not-recovered', 'valve-left-shut'],
  meaning:
    'A valve that is shut at this step keeps the pump from a section with no port of its own, and no later step evacuates it. A section that an earlier pull left at the same level, shut off since, is dry as it stands.',
  why: 'The air and water of that section go round with the charge.',
  source: 'common practice (handbook 13.5)',
  wrong: {
    base: 'rack',
    instead: [
      ['open valve-s, valve-d\n    open sol-1, sol-2 by magnet', 'open valve-s, valve-d\n    return epr-1 to control'],
      ['evacuate system to 500 micron', 'evacuate system to 500 micron # <- here'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    whole.entries.forEach((entry, at) => {
      for (const event of entry.events) {
        if (event.type !== 'evacuates') continue;
        for (const space of event.missed) {
          if (standsAsDeep(entry.before, space, event.level)) continue;
          const later = whole.entries
            .slice(at + 1)
            .some((next) =>
              next.events.some(
                (each) =>
                  each.type === 'evacuates' &&
                  space.parts.every((part) => each.spaces.some((one) => one.parts.includes(part))),
              ),
            );
          if (later) continue;
          whole.report(entry, {
            message: (say) =>
              `The pump does not reach ${say.parts(space.parts)}: hold open the valves that shut it off, or put a hose on it.`,
            slot: 'what',
            root: space.parts.join(),
            concerns: space.parts,
          });
        }
      }
    });
  },
});

/** Whether a section that is shut off stands in a vacuum at least as deep already. A hundredth is less than a gauge shows. */
const standsAsDeep = (plant: Plant, space: Space, level: number): boolean =>
  space.cells.every((cell) => {
    const held = contentsOfCell(plant, cell);
    return held.gas === 'vacuum' && held.high <= level * 1.01;
  });
