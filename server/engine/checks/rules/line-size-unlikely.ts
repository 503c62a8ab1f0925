import type { Part } from '../../circuit/graph';
import { isLine } from '../../circuit/kinds';
import type { Plan } from '../../plan/plan';
import { liquidMost, suctionHorizontalLeast } from '../../reference/velocity-limits';
import { defineCheck } from '../define';
import { isTooWide, liquidLeast, liquidMostEver, speedIn, vapourLeast } from '../line-speed';
import { perHead } from '../per-head';
import { lines, unfit } from '../plant-facts';
import { amount } from '../support';

/** A line whose size cannot be meant: by what flows in it, or by the pieces on both sides of it. */
export const lineSizeUnlikely = defineCheck({
  name: 'line-size-unlikely',
  severity: 'warning',
  title: 'The size of a line does not fit what flows in it',
  acceptable: true,
  noFix: 'Which size lies there is read at the pipe.',
  reads: 'figure',
  ground: 'practice',
  yieldsTo: ['oil-does-not-return', 'vapour-line-too-small'],
  meaning:
    'At the stated capacity the vapour in a suction or vapour line goes slower than it does in any usual line, or the liquid in a liquid line creeps, or (in a circuit without branches) races; or a piece of a line is of another size than the two pieces of one size that it lies between. Silent where the maker’s table is cited.',
  why: 'Mostly a size is misread or mistyped: then solvent, nitrogen, line allowance and rating go by the wrong pipe. If it is true, oil lies in the wide line and liquid flashes in the narrow one.',
  source: `${suctionHorizontalLeast.source}; ${liquidMost.source} (handbook 10.1), each with a margin; the least of a liquid line and the pieces: common practice, no source`,
  wrong: {
    base: 'split',
    instead: [
      ['suction-line kept {', 'suction-line kept { # <- here'],
      ['tube 7/8 in ACR', 'tube 2-1/8 in ACR'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    // Lines that are all too wide, or all too narrow, have one cause: the capacity.
    for (const { part, fault, message } of unlikely(whole.plan))
      whole.reportPart(part, {
        message,
        root: fault,
        concerns: fault === 'too narrow' ? lines(whole.plan).map(({ index }) => index) : [part],
      });
  },
});

type Fault = 'too wide' | 'too narrow' | 'odd piece';
interface Told {
  readonly fault: Fault;
  readonly message: string;
}

const unlikely = perHead((plan): readonly (Told & { readonly part: number })[] => {
  if (unfit(plan) !== null) return [];
  return lines(plan).flatMap((line) => {
    const told = byNeighbours(plan, line) ?? bySpeed(plan, line);
    return told === null ? [] : [{ part: line.index, ...told }];
  });
});

function bySpeed(plan: Plan, line: Part): Told | null {
  const flow = speedIn(plan, line);
  if (!flow) return null;
  const speed = (velocity: number): string => amount(plan, 'velocity', velocity, 'ft/min');
  const say = (fault: Fault, why: string): Told => ({
    fault,
    message: `With ${amount(plan, 'power', flow.load)} ${line.name} (${line.properties.tube!.shown}) is ${fault}: its ${why}; read size and capacity again, or cite the maker's table ("velocity accepted per …").`,
  });
  const goes = `goes at ${speed(flow.velocity)}`;
  if (line.kind.kind !== 'liquid-line')
    return flow.velocity < vapourLeast
      ? say(
          'too wide',
          `vapour ${goes}, and at less than ${speed(suctionHorizontalLeast.quantity.low)} oil lies down in it`,
        )
      : null;
  if (isTooWide(plan, line))
    return say('too wide', `liquid ${goes}, where none goes at less than ${speed(liquidLeast)}`);
  const branches = plan.graph.parts.some((part) => part.circuit === line.circuit && part.within.length > 0);
  return !branches && flow.velocity > liquidMostEver
    ? say('too narrow', `liquid ${goes}, and about ${speed(liquidMost.quantity.low)} is usual`)
    : null;
}

/** A piece between two of one size that is of another one. */
function byNeighbours({ graph }: Plan, line: Part): Told | null {
  const own = line.properties.tube;
  const beside = line.ends.flatMap((end) => {
    const others = (graph.joints[graph.ends[end]!.joint]?.ends ?? []).filter((each) => each !== end);
    return others.length === 1 ? [graph.parts[graph.ends[others[0]!]!.part]!] : [];
  });
  const [one, other] = beside;
  if (!own || !one || !other || one === other || !isLine(line.kind)) return null;
  if (one.kind !== line.kind || other.kind !== line.kind) return null;
  const [before, after] = [one.properties.tube, other.properties.tube];
  if (!before || !after || before.outside !== after.outside || before.outside === own.outside) return null;
  return {
    fault: 'odd piece',
    message: `${line.name} (${own.shown}) lies between ${one.name} and ${other.name} (${before.shown}): a piece of a line is of its size; mend the size.`,
  };
}
