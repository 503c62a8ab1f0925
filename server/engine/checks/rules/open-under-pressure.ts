import type { Plan } from '../../plan/plan';
import type { Step } from '../../plan/step';
import { freelyVented } from '../../reference/venting-exempt';
import { defineCheck } from '../define';
import { refrigerantShows, underPressure } from '../plant';
import { edits, gauge, underLaw } from '../support';
import { asksVacuum, levelAsked } from './recovery-too-shallow';

/** A joint undone while refrigerant or nitrogen stands behind it above the atmosphere. */
export const openUnderPressure = defineCheck({
  name: 'open-under-pressure',
  severity: 'error',
  title: 'A part is opened that holds refrigerant or gas under pressure',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  yieldsTo: ['section-not-recovered', 'recovery-too-shallow'],
  meaning:
    'At this step a joint is undone, a part cut out, taken off or drained, while it, or what is not shut off from it, holds refrigerant above atmospheric pressure, or nitrogen under pressure.',
  why: 'Escaping liquid burns skin and eyes, a hose or a part may fly, and letting refrigerant go is against the law.',
  source: '40 CFR 82.154 and 82.156 (handbook 2.1, 2.2); 29 CFR 1910.147 for the energy',
  wrong: {
    base: 'split',
    instead: [
      ['recover system to 0 inHg\n', ''],
      ['disconnect each kept line at both ends', 'disconnect each kept line at both ends # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const opened = here.events('opens').filter((event) => event.how !== 'pierced');
    for (const event of [...opened, ...here.events('drains')]) {
      const { held, space } = event;
      const charged = refrigerantShows(here.before, held);
      if (!charged && !underPressure(here.before, held)) continue;
      // No law forbids to let carbon dioxide off; people are hurt by it all the same.
      const free = charged && held.refrigerant === freelyVented;
      // What a pump-down has put away is to stay there: only what it left is taken out.
      const pumpedDown = charged && here.before.marks.has('pump-down') && held.since === null;
      const section = pumpedDown ? here.before.graph.parts[event.part]!.name : 'system';
      const what = held.gas === 'refrigerant' ? (held.refrigerant ?? 'refrigerant') : held.gas;
      here.report({
        message: (say) =>
          `This ${event.type === 'drains' ? 'drains' : 'opens'} ${say.parts([event.part])} while ${say.parts(space.parts)} ${space.parts.length > 1 ? 'hold' : 'holds'} ${what} at up to ${gauge(here.plan, held.high)}${pumpedDown ? ' (a pump-down lowers it, and it rises again as what lies in oil and low spots boils off)' : ''}: ${free ? 'let it down outdoors' : charged ? 'recover it' : 'let it down'} first${charged && !free ? underLaw(here.plan, 'opening', held.refrigerant) : ''}.`,
        slot: 'what',
        root: held.since ?? here.before.graph,
        concerns: space.parts,
        related: held.since ? [{ cause: held.since, message: 'it holds this since here' }] : [],
        // What the job let in, or never puts back, is wanted: taking it out is no way to mend the order.
        fixes:
          charged && (free || held.since !== null || !comesBack(here.plan) || !hasRoom(here.plan))
            ? []
            : [
                charged
                  ? {
                      title: 'Recover and prove zero before this step',
                      edits: (mend) =>
                        edits(
                          mend.insertBefore(
                            here.step,
                            `recover ${section} to ${levelAsked(here.plan, what)}`,
                            `prove-zero ${section}`,
                            ...(asksVacuum(here.plan, what) ? [`break-vacuum ${section} with nitrogen`] : []),
                          ),
                        ),
                    }
                  : {
                      title: 'Release the nitrogen before this step',
                      edits: (mend) => edits(mend.insertBefore(here.step, 'release nitrogen outdoors')),
                    },
              ],
      });
    }
  },
});

/** Whether a stated stock has a cylinder to recover into; a job that lets its gas go brings none. */
const hasRoom = (plan: Plan): boolean => plan.bring === null || plan.bring.some((item) => item.word === 'recovery');

/** Whether the job lets refrigerant in again: from a cylinder, or with a new unit that holds its own. */
const comesBack = (plan: Plan): boolean =>
  plan.graph.parts.some((part) => part.properties.holds !== undefined) || hasCharge(plan.steps);
const hasCharge = (steps: readonly Step[]): boolean =>
  steps.some((step) => step.word.word === 'charge' || hasCharge(step.children));
