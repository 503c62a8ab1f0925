import type { Part } from '../../circuit/graph';
import { isVapourLine } from '../../circuit/kinds';
import type { Plan } from '../../plan/plan';
import { exactly } from '../../quantity';
import { oilDensity } from '../../reference/flush-practice';
import { floodingNumberLeast } from '../../reference/velocity-limits';
import { doubleRiserNumber } from '../../takeoff/figures/double-riser';
import { input } from '../../takeoff/given';
import { loadsOf } from '../../takeoff/lines';
import { defineCheck } from '../define';
import { perHead } from '../per-head';
import { isHeatPump, lines, unfit } from '../plant-facts';
import { amount } from '../support';
import { dutyWithNew, isAccepted } from '../vapour-lines';

/** Nothing shorter is a riser: oil is carried over a hump (common practice, no source), m. */
const leastRise = 1;

/** Vapour that is too slow to carry oil up a riser at the least load. */
export const oilDoesNotReturn = defineCheck({
  name: 'oil-does-not-return',
  severity: 'warning',
  title: 'Too slow to carry the oil up the riser',
  acceptable: true,
  noFix: "Another pipe must be laid, or the maker's table read.",
  reads: 'figure',
  ground: 'memory',
  meaning:
    'At the least load that the plan states the vapour in a rising suction or vapour line is slower than oil needs to climb its wall; of a double riser, in the small pipe alone at least load, or in both pipes at full load. Silent where the maker’s table is cited.',
  why: 'The oil stays at the foot of the riser until the compressor runs short, then comes back as a slug.',
  source: floodingNumberLeast.source,
  wrong: {
    base: 'split',
    instead: [
      ['tube 7/8 in ACR\n      length 40 ft', 'tube 1-3/8 in ACR\n      length 40 ft\n      rise 18 ft'],
      ['suction-line kept {', 'suction-line kept { # <- here'],
    ],
  },
  right: {
    base: 'split',
    instead: [['tube 7/8 in ACR\n      length 40 ft', 'tube 7/8 in ACR\n      length 40 ft\n      rise 18 ft']],
  },
  plan(whole) {
    for (const { part, message } of tooSlow(whole.plan)) whole.reportPart(part, { message, concerns: [part] });
  },
});

interface Slow {
  readonly part: number;
  readonly message: string;
}

/** The risers that oil does not climb, each with what is to be said of it. */
const tooSlow = perHead((plan): readonly Slow[] => {
  if (plan.system.velocityAccepted !== null || unfit(plan) !== null) return [];
  const done = new Set<number>();
  const found: Slow[] = [];
  for (const riser of lines(plan)) {
    if (done.has(riser.index) || !rises(riser) || isAccepted(plan, riser)) continue;
    const together = besides(plan, riser);
    for (const each of together) done.add(each.index);
    const loads = loadsOf(plan, riser, together);
    if (!loads) continue;
    const pipes = [...together].sort((a, b) => a.properties.tube!.bore - b.properties.tube!.bore);
    const small = pipes[0]!;
    found.push(...check(plan, small, [small], loads.least, 'at the least load'));
    if (pipes.length > 1)
      found.push(...check(plan, pipes.at(-1)!, pipes, loads.full, 'at full load, with the pipes beside it'));
  }
  return found;
});

const rises = (part: Part): boolean =>
  isVapourLine(part.kind) &&
  part.standing !== 'removed' &&
  part.properties.tube !== undefined &&
  (part.properties.rise ?? 0) >= leastRise;

/** The pipes that begin and end at the same joints: those of a double riser, or the riser alone. */
function besides(plan: Plan, riser: Part): readonly Part[] {
  const joints = (part: Part): string => part.ends.map((end) => plan.graph.ends[end]!.joint).join();
  return plan.graph.parts.filter((part) => rises(part) && part.ends.length === 2 && joints(part) === joints(riser));
}

function check(plan: Plan, at: Part, pipes: readonly Part[], load: number, when: string): readonly Slow[] {
  const duty = dutyWithNew(plan);
  if (!duty) return [];
  const flow = load / duty.effect;
  const number = doubleRiserNumber.figure(at.name, {
    flow: input(exactly('mass-flow', flow)),
    density: input(exactly('density', duty.suctionDensity)),
    bores: pipes.map((pipe) => input(exactly('length', pipe.properties.tube!.bore))),
    oil: input(oilDensity.quantity, 'reference'),
  }).quantity;
  const least = floodingNumberLeast.quantity.low;
  if (!number || number.high >= least) return [];
  const velocity =
    flow /
    (duty.suctionDensity * pipes.reduce((sum, pipe) => sum + (Math.PI / 4) * pipe.properties.tube!.bore ** 2, 0));
  return [
    {
      part: at.index,
      message: `${at.name} rises ${amount(plan, 'length', at.properties.rise ?? 0)}, and ${when} the vapour goes at ${amount(plan, 'velocity', velocity, 'ft/min')} where oil needs about ${amount(plan, 'velocity', (velocity * least) / number.high, 'ft/min')}${isHeatPump(plan) ? ' in cooling' : ''}: a smaller pipe or a double riser, or cite the maker's table ("velocity accepted per …").`,
    },
  ];
}
