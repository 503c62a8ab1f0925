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
  ground: 'memory',
  meaning:
    'At the stated capacity the vapour in a suction or vapour line loses more than the accepted 2 °F of saturation temperature or goes faster than 4,000 ft/min, each with a quarter in hand. Silent where the maker’s table is cited; or the line is thinner than the liquid line of a circuit without branches, which no table asks for.',
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

/** Vapour lines thinner than the liquid line: whatever the load and the table, a size slipped. */
const thin = perHead((plan): readonly Told[] =>
  plan.graph.circuits.flatMap((_, circuit) => {
    const inCircuit = (part: Part): boolean => part.circuit === circuit && part.standing !== 'removed';
    const parts = plan.graph.parts.filter(inCircuit);
    // Where branches part, the liquid of all may run in a pipe that is thicker than the vapour of one.
    if (parts.some((part) => part.within.length > 0)) return [];
    const bores = parts.flatMap((part) =>
      part.kind.kind === 'liquid-line' && part.properties.tube ? [part.properties.tube] : [],
    );
    const liquid = bores.sort((a, b) => a.bore - b.bore)[0];
    // A liquid line that is too wide for any flow is told as that.
    if (parts.some((part) => part.kind.kind === 'liquid-line' && isTooWide(plan, part))) return [];
    return parts.flatMap(({ index, name, kind, properties: { tube } }): readonly Told[] =>
      isVapourLine(kind) && tube && liquid && tube.bore < liquid.bore * 0.99
        ? [
            {
              part: index,
              message: `${name} (${tube.shown}) is thinner than the liquid line (${liquid.shown}), and the same refrigerant goes through both: as vapour it needs many times the room; mend the size.`,
            },
          ]
        : [],
    );
  }),
);

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
