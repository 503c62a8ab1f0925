import { has, isCharge, leaves } from '../course';
import { defineCheck } from '../define';
import { burns, newFacts, unfit } from '../plant-facts';
import { authority, edits } from '../support';

/** Joints that are made with a tool and can be undone with one. */
const mechanical: ReadonlySet<string> = new Set(['flare', 'pressed', 'flanged']);

/** A mechanical joint in a circuit that is filled with gas that burns, and nobody looks at it. */
export const flammableJointUnchecked = defineCheck({
  name: 'flammable-joint-unchecked',
  severity: 'warning',
  title: 'A mechanical joint with a flammable refrigerant is not leak-checked',
  acceptable: true,
  reads: 'state',
  ground: 'memory',
  meaning:
    'A refrigerant that burns goes into a circuit in which this job made up a flare, a pressed or a flanged joint, and no step looks at the joints: neither bubbles in the pressure test, nor a leak check before or after the charge; nor does the test cite a sheet.',
  why: 'The gauge of a pressure test does not show a leak of a few grams a year; in a small room that is what the standard allows for such a joint, no more.',
  source:
    'UL and IEC 60335-2-40: joints made in the field are tested to 5 g a year; from memory (handbook 7.1, 10.3, 11)',
  wrong: {
    base: 'ductless',
    instead: [
      ['500 psig for 60 min, bubbles on every joint', '500 psig for 60 min'],
      ['open service-valves', 'open service-valves # <- here'],
    ],
  },
  right: { base: 'ductless' },
  plan(whole) {
    const { plan, entries } = whole;
    if (unfit(plan) !== null || burns(newFacts(plan)) === 0) return;
    const made = entries.flatMap((entry) =>
      entry.events.flatMap((event) => {
        if (event.type !== 'joins' || event.torch) return [];
        const { graph } = plan;
        const around = event.ends.flatMap((end) => graph.joints[graph.ends[end]!.joint]?.ends ?? [end]);
        const flare = around.find((end) => mechanical.has(graph.parts[graph.ends[end]!.part]!.properties.joint ?? ''));
        return flare === undefined ? [] : [{ entry, part: graph.ends[flare]!.part }];
      }),
    );
    const [first] = made;
    const filled = entries.find((entry) => isCharge(entry) || has(entry, 'lets-in'));
    if (!first || !filled) return;
    const looked = entries.some(
      (entry) =>
        leaves(entry, /^leak-check/) ||
        (has(entry, 'pressurises') &&
          (entry.slot.step.values['bubbles'] === true || entry.slot.step.values['per'] !== undefined)),
    );
    if (looked) return;
    const parts = [...new Set(made.map((each) => each.part))];
    whole.report(filled, {
      message: (say) =>
        `${plan.system.refrigerant.after} burns (${newFacts(plan)?.safetyClass}), and no step looks for leaks at the joints that are made up on ${say.parts(parts)}: soap them in the test, or leak-check them with a detector for it; ${authority}.`,
      slot: 'what',
      root: 'flammable-joints',
      related: [{ cause: first.entry.cause, message: 'made up here' }],
      fixes: [
        {
          title: 'Leak-check after this step',
          edits: (mend) => edits(mend.insertAfter(filled.slot.step, 'leak-check system')),
        },
      ],
    });
  },
});
