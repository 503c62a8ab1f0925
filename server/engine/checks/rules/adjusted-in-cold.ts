import type { Part } from '../../circuit/graph';
import { child } from '../../plan/bind';
import type { Plan } from '../../plan/plan';
import type { Step } from '../../plan/step';
import { outdoorsLeast } from '../../reference/charging';
import { statedTime } from '../course';
import { defineCheck } from '../define';
import { touched } from '../plant';
import { edits, shown } from '../support';

/** How much later a visit may be, s. */
const later = (visit: Step): number => Math.max(...['within', 'after'].map((slot) => statedTime(visit, slot)));

/** Charge judged by temperatures on a day too cold for it. */
export const adjustedInCold = defineCheck({
  name: 'adjusted-in-cold',
  severity: 'warning',
  title: 'The charge is adjusted outside the weather that the method is good for',
  acceptable: true,
  reads: 'figure',
  ground: 'published',
  meaning:
    'The charge is trimmed by subcooling or superheat while the site states less than 55 °F outdoors. Weigh it in, or come back on a warmer day: a visit a week and more later has its own weather.',
  why: 'In cold weather the condenser holds more liquid than the method reckons with, and the machine is overfilled by summer.',
  source: `${outdoorsLeast.source} (handbook 9.2)`,
  wrong: {
    base: 'split',
    instead: [
      ['outdoors 80 degF', 'outdoors 45 degF'],
      ['adjust charge after 15 min', 'adjust charge after 15 min # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { outdoors } = here.plan.site;
    const { graph } = here.after;
    if (here.per || !outdoors || outdoors.quantity.low >= outdoorsLeast.quantity.low - 0.01) return;
    if (graph.parts.some((part) => part.kind.kind === 'receiver' && touched(graph, part.index))) return;
    // Outdoor air does not reach a condenser that water cools.
    if (here.plan.graph.parts.some((part) => touched(graph, part.index) && isWaterCooled(here.plan, part))) return;
    // A visit a week and more later has its own weather.
    if (here.entry.slot.within.some((step) => step.word.word === 'visit' && later(step) >= 7 * 86400)) return;
    const event = here.events('adjusts').find((each) => each.what === 'charge' && typeof each.to !== 'string');
    if (!event) return;
    here.report({
      message: `At ${shown(here.plan, outdoors.quantity)} outdoors a charge cannot be judged by subcooling or superheat (${outdoorsLeast.source}): weigh it in.`,
      slot: 'what',
      related: [{ bound: outdoors.bound, span: outdoors.span, message: 'the weather is stated here' }],
      fixes: [
        {
          title: 'Adjust to weight',
          edits: (mend) =>
            edits(
              here.step.spans['to'] ? mend.replace(here.step, 'to', 'to weight') : mend.append(here.step, ' to weight'),
            ),
        },
      ],
    });
  },
});

/** Coils that have water on the other side by their make. */
const inWater: readonly string[] = ['coaxial-coil', 'plate-exchanger'];

/** A coil of the high side with water behind it, by its kind or because the plan says how much flows. */
const isWaterCooled = (plan: Plan, part: Part): boolean =>
  part.kind.group === 'coil' &&
  part.highSide &&
  (inWater.includes(part.kind.kind) || child(plan.partStatements[part.index]?.block ?? [], 'water-flow') !== undefined);
