import type { Part } from '../../circuit/graph';
import { isVapourLine } from '../../circuit/kinds';
import type { Plan } from '../../plan/plan';
import { exactly } from '../../quantity';
import { equivalentLength } from '../../reference/equivalent-lengths';
import { suctionDropMost, vapourMost } from '../../reference/velocity-limits';
import { equivalentLineLength, lineVelocity, pressureDrop, saturationLoss } from '../../takeoff/figures';
import { computed, input, named } from '../../takeoff/given';
import { loadsOf } from '../../takeoff/lines';
import { defineCheck } from '../define';
import { outOfProportion } from '../equipment';
import { isTooWide } from '../line-speed';
import { perHead } from '../per-head';
import { lines, unfit } from '../plant-facts';
import { amount } from '../support';
import { dutyWithNew, evaporatingOf, isAccepted } from '../vapour-lines';

/** The rule of thumb and the figure hang on assumed temperatures: only what is clearly over is told (common practice, no source). */
const margin = 1.25;

/** A suction or vapour line in which the pressure that is lost costs capacity. */
export const vapourLineTooSmall = defineCheck({
  name: 'vapour-line-too-small',
  severity: 'warning',
  title: 'The suction line loses too much pressure',
  acceptable: true,
  noFix: "Another pipe must be laid, or the maker's table read.",
  reads: 'figure',
  yieldsTo: ['working-temperatures-unlikely'],
  ground: 'memory',
  meaning:
    'At the stated capacity the vapour in a suction or vapour line loses more than the accepted 2 °F of saturation temperature or goes faster than 4,000 ft/min, each with a quarter in hand. Silent where the maker’s table is cited. Or the line is thinner than a liquid, discharge or hot-gas line that carries no more than it does, which no table asks for.',
  why: 'Each degree lost costs about two per cent of capacity, the compressor runs hotter, and fast vapour is heard in the rooms.',
  source: `${suctionDropMost.source}; ${vapourMost.source} (handbook 10.1)`,
  wrong: {
    base: 'split',
    instead: [
      ['suction-line kept {', 'suction-line kept { # <- here'],
      ['tube 7/8 in ACR', 'tube 1/2 in ACR'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    for (const { part, message } of [...thin(whole.plan), ...overloaded(whole.plan)])
      whole.reportPart(part, { message, concerns: [part] });
  },
});

interface Told {
  readonly part: number;
  readonly message: string;
}

/** Lines that the same refrigerant goes through, denser. */
const denser: readonly string[] = ['liquid-line', 'discharge-line', 'hot-gas-line'];

/** Vapour lines thinner than a liquid or hot-gas line: whatever the load and the table, a size slipped. */
const thin = perHead((plan): readonly Told[] =>
  plan.graph.circuits.flatMap((_, circuit) => {
    const parts = plan.graph.parts.filter((part) => part.circuit === circuit);
    // A liquid line that is too wide for any flow is told as that.
    if (parts.some((part) => part.kind.kind === 'liquid-line' && isTooWide(plan, part))) return [];
    return parts.flatMap((part): readonly Told[] => {
      const { index, name, kind, properties } = part;
      const { tube } = properties;
      if (!isVapourLine(kind) || !tube) return [];
      const wider = denser
        .map((each) => narrowest(parts.filter((other) => other.kind.kind === each && isWithin(other, part))))
        .find((other) => other && tube.bore < other.properties.tube!.bore * 0.99);
      if (!wider) return [];
      const message = `${name} (${tube.shown}) is thinner than the ${wider.kind.kind.replace(/-line$/, ' line')} (${wider.properties.tube!.shown}), and the same refrigerant goes through both: as vapour of the low side it needs many times the room; mend the size.`;
      return [{ part: index, message }];
    });
  }),
);

/** Where branches part, a pipe before them may be thicker than the vapour line of one; what stands in its own stretch carries no more than it. */
const isWithin = (other: Part, line: Part): boolean =>
  line.within.every((name, at) => other.within[at] === name) &&
  (other.standing === 'removed') === (line.standing === 'removed');

const narrowest = (lines: readonly Part[]): Part | undefined =>
  lines.filter((line) => line.properties.tube).sort((a, b) => a.properties.tube!.bore - b.properties.tube!.bore)[0];

/** The lines that are too small, each with what is to be said of it. */
const overloaded = perHead((plan): readonly Told[] => {
  const told = new Set(thin(plan).map(({ part }) => part));
  // A capacity that the charge contradicts is told as that.
  if (plan.system.velocityAccepted !== null || unfit(plan) !== null || outOfProportion(plan)) return [];
  return lines(plan).flatMap((line) => {
    const found = isMeasured(line) && !told.has(line.index) && !isAccepted(plan, line) ? lost(plan, line) : null;
    if (!found) return [];
    const { loss, velocity, load } = found;
    const slow = velocity <= vapourMost.quantity.high * margin;
    if (slow && (loss === null || loss <= suctionDropMost.quantity.high * margin)) return [];
    return [
      {
        part: line.index,
        message: `With ${amount(plan, 'power', load)} ${line.name} (${line.properties.tube!.shown}) loses ${loss === null ? 'more than the tables reach' : `${amount(plan, 'temperature-difference', loss)} of saturation temperature`} at ${amount(plan, 'velocity', velocity, 'ft/min')}; accepted are ${amount(plan, 'temperature-difference', suctionDropMost.quantity.high)} (${suctionDropMost.source}) and at most ${amount(plan, 'velocity', vapourMost.quantity.high, 'ft/min')}: a larger line, or cite the maker's table ("velocity accepted per …").`,
      },
    ];
  });
});

const isMeasured = (part: Part): boolean =>
  isVapourLine(part.kind) &&
  part.standing !== 'removed' &&
  part.properties.tube !== undefined &&
  part.properties.length !== undefined;

/** Loss of saturation temperature, K, and velocity, m/s, at full load; null where the plan does not say what flows. */
function lost(
  plan: Plan,
  line: Part,
): { readonly loss: number | null; readonly velocity: number; readonly load: number } | null {
  const joints = line.ends.map((end) => plan.graph.ends[end]!.joint).join();
  // What goes through one of two pipes side by side is another check's question.
  if (
    plan.graph.parts.some(
      (each) => each !== line && each.ends.map((end) => plan.graph.ends[end]!.joint).join() === joints,
    )
  )
    return null;
  const loads = loadsOf(plan, line, [line]);
  const duty = dutyWithNew(plan);
  if (!loads || !duty) return null;
  const { tube, length, elbows } = line.properties;
  const options = { atmosphere: plan.site.atmosphere };
  const flow = input(exactly('mass-flow', loads.full / duty.effect));
  const density = input(exactly('density', duty.suctionDensity));
  const bore = input(exactly('length', tube!.bore));
  const fitting = elbows?.kind === 'long-radius' ? 'long-radius-elbow' : 'elbow';
  const inAll = equivalentLineLength.figure(line.name, {
    length: input(exactly('length', length!)),
    fittings: [input(exactly('length', (elbows?.count ?? 0) * equivalentLength(fitting, tube!.outside)))],
  });
  const drop = pressureDrop.figure(
    line.name,
    {
      flow,
      density,
      viscosity: input(exactly('viscosity', duty.suctionViscosity)),
      bore,
      length: computed(inAll),
    },
    options,
  );
  const velocity = lineVelocity.figure(line.name, { flow, density, bore }).quantity?.low;
  if (velocity === undefined || !drop.quantity) return null;
  const loss = saturationLoss.figure(
    line.name,
    {
      refrigerant: named(plan.system.refrigerant.after ?? ''),
      temperature: input(exactly('temperature', evaporatingOf(plan))),
      drop: computed(drop),
    },
    options,
  ).quantity;
  return { loss: loss?.low ?? null, velocity, load: loads.full };
}
