import type { Space } from '../../circuit/spaces';
import { spacesOf } from '../../circuit/spaces';
import type { Plant } from '../../circuit/state';
import { has } from '../course';
import { defineCheck } from '../define';
import { heldBy, onlyDriers, sectionsLetIn } from '../plant';
import { inOwn } from '../support';
import { bringBefore, said } from '../ways-out';

/** Refrigerant let into a vacuum that nobody watched. */
export const decayTestMissing = defineCheck({
  name: 'decay-test-missing',
  severity: 'warning',
  title: 'Charged into a vacuum with no decay test',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  yieldsTo: ['joint-left-open', 'charge-into-gas', 'valves-opened-early'],
  meaning:
    'Refrigerant is let into a part that was evacuated, and no decay test with the pump valved off has proved it tight and dry.',
  why: 'A level read with the pump running tells nothing of leaks and water; the charge goes over both.',
  source: 'federal guide specification 15182 (handbook 8.1, 13.1)',
  wrong: {
    base: 'split',
    instead: [
      ['decay-test each open part for 15 min, rise at most 300 micron\n', ''],
      ['open service-valves', 'open service-valves # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const charged = here.events('charges').filter((event) => event.purpose === 'charge');
    const spaces = [
      ...charged.flatMap((event) => event.spaces),
      ...here.events('lets-in').flatMap((event) => besides(here.before, event.ends)),
      ...(charged.length === 0 ? sectionsLetIn(here.before, here.after) : []),
    ];
    for (const space of spaces) {
      const held = heldBy(here.before, spacesOf(here.before, space.parts[0]!)[0] ?? space);
      if (held.gas !== 'vacuum' || space.openings.length > 0 || onlyDriers(here.before, space)) continue;
      const unproved = space.parts.filter((part) => here.before.parts[part]!.decayTested === null);
      if (unproved.length === 0) continue;
      here.report({
        message: (say) =>
          `Refrigerant goes into ${say.parts(space.parts)} with no decay test since ${say.step(held.since)}: valve the pump off and watch the vacuum first.`,
        slot: 'what',
        root: held.since,
        concerns: space.parts,
        related: [{ cause: held.since, message: 'it was pumped down here' }],
        fixes: [
          {
            title: 'Decay test before this step',
            edits: (mend) => {
              // The plan's own, where it stands too early or too late to see a vacuum.
              const idle = mend.view.walk.entries.find(
                (entry) => entry.slot.step.word.word === 'decay-test' && has(entry, 'no-effect'),
              )?.slot.step;
              // What it names may be cut off from the rest by then; the system is not. A unit's own charge is left alone.
              const what = here.before.parts.some(({ ownCharge }) => ownCharge) ? 'each open part' : 'system';
              return bringBefore(
                mend,
                idle,
                here.step,
                `decay-test ${what} for 15 min, rise at most ${inOwn(here.plan, '300 micron', '40 Pa')}`,
                (text) => (idle ? text.replace(said(idle, 'what'), what) : text),
              );
            },
          },
        ],
      });
    }
  },
});

/** The spaces on the line's side of a unit's valves. */
export function besides(plant: Plant, ends: readonly number[]): readonly Space[] {
  const { graph } = plant;
  const parts = new Set(
    ends.flatMap((end) =>
      (graph.joints[graph.ends[end]!.joint]?.ends ?? [])
        .filter((each) => each !== end)
        .map((each) => graph.ends[each]!.part),
    ),
  );
  return [...new Set([...parts].flatMap((part) => spacesOf(plant, part)))];
}
