import type { Space } from '../../circuit/spaces';
import type { Plant } from '../../circuit/state';
import { freelyVented } from '../../reference/venting-exempt';
import { defineCheck, type Here } from '../define';
import { mayBeLetOff } from '../equipment';
import { isOrAre } from '../is-are';
import { aboveZero, isJoined, standsNow } from '../plant';
import { edits, gauge, underLaw } from '../support';
import { moveDown } from '../ways-out';

/** Refrigerant let into the air by something else than a joint undone: a valve, a cap, a cut. */
export const refrigerantVented = defineCheck({
  name: 'refrigerant-vented',
  severity: 'error',
  title: 'Refrigerant is let into the air',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  yieldsTo: ['open-under-pressure', 'valves-opened-early', 'joint-left-open'],
  meaning:
    'A valve, a cap or an open end that this step frees lets refrigerant into the air, or the step lets it off on purpose. Carbon dioxide may be let off, outdoors; so may the propane or isobutane of a sealed cabinet (`equipment self-contained`, or a small appliance).',
  why: 'Knowing release of refrigerant is against the law, wastes the charge and can burn or suffocate people. Hose purges within good practice are not meant.',
  source: '40 CFR 82.154 (handbook 2.2)',
  wrong: {
    base: 'rack',
    instead: [
      [
        'leak-check system\n',
        'leak-check system\n  lock-out comp\n  close valve-s, valve-d\n  recover comp to 0 inHg\n  prove-zero comp\n  disconnect comp at both ends\n  open valve-s, valve-d # <- here\n  connect comp at both ends with new-gaskets\n  pressure-test comp to 150 psig for 30 min\n  release nitrogen outdoors\n  evacuate comp to 500 micron\n  decay-test comp for 30 min, rise at most 200 micron\n',
      ],
    ],
  },
  right: { base: 'rack' },
  step(here) {
    onPurpose(here);
    if (here.events('opens').length > 0) return;
    for (const { space, contents } of here.entry.released) {
      if (!aboveZero(here.before, contents)) continue;
      const gone = missingBeside(here.after, space);
      here.report({
        message: (say) =>
          `This lets ${contents.refrigerant ?? 'refrigerant'} at up to ${gauge(here.plan, contents.high)} out of ${say.parts(space.parts)} into the air${gone.length > 0 ? `, where ${say.parts(gone)} ${isOrAre(gone.length)} not in place` : ''}: recover it first, or make up what is open${underLaw(here.plan, 'opening', contents.refrigerant)}.`,
        slot: 'what',
        concerns: [...space.parts, ...gone],
        fixes: [
          moveDown('Do it when what is open is made up and proved', here.entry, 'after', (later) =>
            space.openings.every(({ end }) => isReady(later.after, end)),
          ),
        ],
        related: contents.since ? [{ cause: contents.since, message: 'it holds this since here' }] : [],
      });
    }
  },
});

/** What a step lets off: carbon dioxide may go, and the little gas of a sealed cabinet, outdoors, where nobody has to breathe it. */
function onPurpose(here: Here): void {
  for (const event of here.events('vents')) {
    const at = event.held.findIndex((held) => !mayBeLetOff(here.plan, held.refrigerant) || !event.outdoors);
    if (at < 0) continue;
    const { refrigerant, high, since } = event.held[at]!;
    const parts = event.spaces[at]!.parts;
    const law = underLaw(here.plan, 'opening', refrigerant);
    const free = mayBeLetOff(here.plan, refrigerant);
    here.report({
      message: (say) =>
        free
          ? `This lets ${refrigerant} at up to ${gauge(here.plan, high)} out of ${say.parts(parts)} where people are: it lies low and ${refrigerant === freelyVented ? 'takes the air away' : 'burns'}; lead it outdoors and say so.`
          : `This lets ${refrigerant ?? 'refrigerant'} at up to ${gauge(here.plan, high)} out of ${say.parts(parts)} into the air: recover it${law}.`,
      slot: 'what',
      concerns: parts,
      related: since ? [{ cause: since, message: 'it holds this since here' }] : [],
      fixes: free ? [{ title: 'Lead it outdoors', edits: (mend) => edits(mend.append(here.step, ' outdoors')) }] : [],
    });
  }
}

/** Parts that are off where a space stands open. */
const missingBeside = (plant: Plant, space: Space): readonly number[] => [
  ...new Set(
    space.openings
      .flatMap(({ end }) => plant.graph.joints[plant.graph.ends[end]!.joint]?.ends ?? [])
      .map((end) => plant.graph.ends[end]!.part)
      .filter((part) => !standsNow(plant, part)),
  ),
];

/** Whether the joint at an end is made up, and what hangs there holds refrigerant or a vacuum that was proved. */
const isReady = (plant: Plant, end: number): boolean =>
  isJoined(plant, end) &&
  (plant.graph.joints[plant.graph.ends[end]!.joint]?.ends ?? []).every((each) => {
    const { contents, decayTested } = plant.parts[plant.graph.ends[each]!.part]!;
    return contents.every(({ gas }) => gas === 'refrigerant' || (gas === 'vacuum' && decayTested !== null));
  });
