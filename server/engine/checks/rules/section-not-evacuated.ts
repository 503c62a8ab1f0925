import { contentsOfCell } from '../../circuit/settle';
import type { Space } from '../../circuit/spaces';
import type { Plant } from '../../circuit/state';
import type { Selector } from '../../plan/selection';
import type { Entry } from '../../walk/walk';
import { defineCheck, type WayOut } from '../define';
import { openLines, shutAround } from '../held-open';
import { insertBefore } from '../ways-out';

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
            fixes: heldOpen(whole.entries, entry, space),
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

/** The valves that shut it off are held open for the pump, where a later step returns them or shuts them again anyway. */
function heldOpen(entries: readonly Entry[], entry: Entry, space: Space): readonly WayOut[] {
  const shut = shutAround(entry.before, space);
  const lines = openLines(entry.before, shut);
  const later = entries.slice(entries.indexOf(entry) + 1).map((each) => each.slot.step);
  const taken = (valve: number): boolean =>
    entry.before.graph.parts[valve]!.kind.shuts === 'hand' ||
    later.some(
      (step) =>
        step.word.word === 'return' &&
        ((step.values['what'] as readonly Selector[] | undefined) ?? []).some(
          (each) => each.noun === entry.before.graph.parts[valve]!.name,
        ),
    );
  return lines.length > 0 && shut.every(taken)
    ? [insertBefore('Hold these valves open for the pump', together(entries, entry, space).slot.step, ...lines)]
    : [];
}

/** The step at which the valves should have been open: the last test of the section, where it was one of all sections together. */
const together = (entries: readonly Entry[], entry: Entry, space: Space): Entry =>
  entries
    .slice(0, entries.indexOf(entry))
    .reverse()
    .flatMap((each) =>
      each.events.flatMap((event) =>
        event.type === 'pressurises' && event.spaces.some((one) => space.parts.some((part) => one.parts.includes(part)))
          ? [{ each, spaces: event.spaces.length }]
          : [],
      ),
    )
    .slice(0, 1)
    .find(({ spaces }) => spaces > 1)?.each ?? entry;
