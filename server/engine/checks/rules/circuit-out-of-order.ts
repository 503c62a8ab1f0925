import type { CircuitSpec, Part, Series } from '../../circuit/graph';
import { defineCheck, type Whole } from '../define';
import { perHead } from '../per-head';
import { isCompressor } from '../plant';

/** What flows at a place of the circuit, in cooling, by what it has passed last; null where branches differ. */
type Stretch = 'hot gas' | 'liquid' | 'fed' | 'vapour';

/** Where a part may stand. A kind that is not listed may stand anywhere. */
const belongs: Readonly<Record<string, readonly Stretch[]>> = {
  compressor: ['vapour', 'hot gas'],
  'discharge-line': ['hot gas'],
  'oil-separator': ['hot gas'],
  condenser: ['hot gas', 'liquid'],
  // A tank may hold vapour back from a cascade's low stage.
  receiver: ['liquid', 'vapour'],
  'sight-glass': ['liquid'],
  // In the liquid line, or behind the coil after a burnout; hot gas drives its water out.
  'filter-drier': ['liquid', 'fed', 'vapour'],
  'evaporator-pressure-regulator': ['vapour'],
  // A metering device may stand in the outdoor unit, with the liquid line behind it.
  'liquid-line': ['liquid', 'fed'],
  'expansion-valve': ['liquid', 'fed'],
  'electronic-expansion-valve': ['liquid', 'fed'],
  'fixed-orifice': ['liquid', 'fed'],
  'cap-tube': ['liquid', 'fed'],
  distributor: ['fed'],
  evaporator: ['fed', 'vapour'],
  accumulator: ['vapour'],
  // Hot gas goes through one of its ways, and what comes back from the coils through the other.
  'reversing-valve': ['hot gas', 'vapour'],
  'suction-line': ['vapour'],
  'vapour-line': ['vapour'],
};

const where: Readonly<Record<Stretch, string>> = {
  'hot gas': 'between compressor and condenser',
  liquid: 'between condenser and metering device',
  fed: 'between metering device and evaporator',
  vapour: 'between evaporator and compressor',
};

/** Parts in an order in which no refrigerant can go round. */
export const circuitOutOfOrder = defineCheck({
  name: 'circuit-out-of-order',
  severity: 'warning',
  title: 'A part stands at the wrong place of the circuit',
  acceptable: true,
  noFix:
    'Whether the part or its neighbour stands at the wrong place, or is of another kind, is for whoever knows the machine.',
  reads: 'state',
  ground: 'practice',
  meaning:
    'In the order of flow a part stands where no part of its kind can: a suction line before the evaporator, a receiver before the condenser, a metering device behind the coil that it feeds. Circuits are stated in the order of flow in cooling, from any part on.',
  why: 'Which part is the far end, what is recovered with what, which side is tested at which pressure and what may be flushed all follow from that order.',
  source: 'the refrigerant circuit: common knowledge of the trade (handbook 13.0)',
  wrong: {
    base: 'split',
    instead: [
      ['    evaporator new {\n      rated 500 psig\n      leak-sensor built-in\n    }\n', ''],
      [
        '    suction-line kept {\n      tube 7/8 in ACR\n      length 40 ft\n      joint brazed\n    }\n',
        '    suction-line kept { # <- here\n      tube 7/8 in ACR\n      length 40 ft\n      joint brazed\n    }\n    evaporator new {\n      rated 500 psig\n      leak-sensor built-in\n    }\n',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const told = new Set<CircuitSpec>();
    for (const { circuit, odd } of outOfOrder(whole.plan)) {
      told.add(circuit);
      report(whole, circuit, odd);
    }
    for (const { circuit, compressor, valves, side } of shutOnOneSide(whole.plan)) {
      if (told.has(circuit)) continue;
      const [first, second] = valves;
      whole.reportPart(compressor.index, {
        message: `${first.name} and ${second.name} both stand ${side} ${compressor.name} in the order of flow, and nothing shuts it off on its other side: its two valves stand one before it and one behind it.`,
        root: `one side ${compressor.index}`,
        concerns: [compressor.index, first.index, second.index],
        related: valves.map((valve) => ({ part: valve.index, message: 'this valve' })),
      });
    }
  },
});

const outOfOrder = perHead((plan) => {
  const { graph } = plan;
  return graph.circuits.flatMap((circuit, at) => {
    const parts = graph.parts.filter((part) => part.circuit === at);
    // What stood there before the job, and what stands there behind it, each has its order.
    for (const stands of [(part: Part) => part.standing !== 'removed', (part: Part) => part.standing !== 'added']) {
      const odd = goRound(circuit, parts.filter(stands));
      if (odd.length > 0) return [{ circuit, odd }];
    }
    return [];
  });
});

interface OneSided {
  readonly circuit: CircuitSpec;
  readonly compressor: Part;
  readonly valves: readonly [Part, Part];
  readonly side: 'before' | 'behind';
}

/** Compressors with two hand valves next to each other on one side, and none on the other. */
const shutOnOneSide = perHead((plan) => {
  const { parts, ends, joints } = plan.graph;
  // What meets an end, and it alone: a header that other branches join is no neighbour.
  const beside = (part: Part, side: 0 | 1): Part | undefined => {
    const meeting = joints[ends[part.ends[side]!]!.joint]?.ends.filter((each) => each !== part.ends[side]);
    return meeting?.length === 1 ? parts[ends[meeting[0]!]!.part] : undefined;
  };
  const isValve = (part: Part | undefined): part is Part => part?.kind.shuts === 'hand' && part.ends.length === 2;
  return parts.filter(isCompressor).flatMap((compressor): OneSided[] => {
    for (const [side, other] of [[1, 0] as const, [0, 1] as const]) {
      const first = beside(compressor, side);
      const second = isValve(first) ? beside(first, side) : undefined;
      if (!isValve(first) || !isValve(second) || isValve(beside(compressor, other))) continue;
      const circuit = plan.graph.circuits[compressor.circuit]!;
      return [{ circuit, compressor, valves: [first, second], side: side === 1 ? 'behind' : 'before' }];
    }
    return [];
  });
});

interface Misplaced {
  readonly part: Part;
  readonly stretch: Stretch;
  /** The part that the stretch begins behind. */
  readonly behind: Part | null;
}

/** What is out of order among these parts. The circuit closes: what it ends with it begins with. */
function goRound(circuit: CircuitSpec, parts: readonly Part[]): readonly Misplaced[] {
  const before = new Round(parts);
  const begins = before.through(circuit.series, null);
  const round = new Round(parts);
  round.through(circuit.series, begins);
  return round.misplaced;
}

/** One way round a circuit, keeping what flows. */
class Round {
  misplaced: Misplaced[] = [];
  private behind: Part | null = null;
  private readonly named: ReadonlyMap<string, Part>;
  /** Where the compressor stands on another drawing, vapour turns hot gas unseen. */
  private readonly driven: boolean;
  /** What each part that the flow meets twice was met by first. */
  private readonly met = new Map<Part, Stretch | null>();

  constructor(parts: readonly Part[]) {
    this.named = new Map(parts.map((part) => [part.name, part]));
    this.driven = parts.some(isCompressor);
  }

  through(series: Series, begins: Stretch | null): Stretch | null {
    let stretch = begins;
    for (const item of series) {
      if (item.type === 'part') stretch = this.pass(this.named.get(item.part.name), stretch);
      else if (item.type === 'through') this.passAgain(this.named.get(item.name), stretch);
      else {
        const from = stretch;
        const ends = item.branches.map((branch) => this.through(branch.series, from));
        // A way past the valve or the coil changes nothing; where it meets the others, theirs is what flows.
        const changed = ends.filter((each) => each !== from);
        const [first] = changed.length > 0 ? changed : [from];
        stretch = changed.every((each) => each === first) ? first! : null;
      }
    }
    return stretch;
  }

  private pass(part: Part | undefined, stretch: Stretch | null): Stretch | null {
    if (!part) return stretch;
    if (part.kind.passages === 2) this.met.set(part, stretch);
    // What comes in one casing is drawn together, and its accumulator stands beside the coil on paper alone.
    const may = part.casing !== null && part.kind.kind === 'accumulator' ? undefined : belongs[part.kind.kind];
    const unseen = !this.driven && stretch === 'vapour';
    if (stretch && may && !may.includes(stretch) && !(unseen && may.includes('hot gas')))
      this.misplaced.push({ part, stretch, behind: this.behind });
    // Between two metering devices, one for each way of a heat pump or of a flash tank, liquid is held and seen as well.
    if (part.kind.group === 'metering')
      this.misplaced = this.misplaced.filter(
        (each) => each.stretch !== 'fed' || !belongs[each.part.kind.kind]!.includes('liquid'),
      );
    const next =
      unseen && part.kind.group === 'coil' && part.kind.kind !== 'evaporator' ? null : behindOf(part, stretch);
    if (next !== stretch) this.behind = part;
    return next;
  }

  /** Both ways through a reversing valve cannot carry the same. */
  private passAgain(part: Part | undefined, stretch: Stretch | null): void {
    if (part?.kind.kind !== 'reversing-valve' || !stretch) return;
    const may = belongs[part.kind.kind]!;
    if (!may.includes(stretch) || (this.driven && this.met.get(part) === stretch))
      this.misplaced.push({ part, stretch, behind: this.behind });
  }
}

/** What flows behind a part. A coil that serves both sides goes by what comes in. */
function behindOf(part: Part, stretch: Stretch | null): Stretch | null {
  const { kind, group } = part.kind;
  if (kind === 'compressor') return 'hot gas';
  if (group === 'metering') return 'fed';
  if (kind === 'condenser') return 'liquid';
  if (kind === 'evaporator') return 'vapour';
  if (group !== 'coil') return stretch;
  if (stretch === 'hot gas') return 'liquid';
  return stretch === 'fed' ? 'vapour' : stretch;
}

function report(whole: Whole, circuit: CircuitSpec, odd: readonly Misplaced[]): void {
  // What a circuit is begun with is right more often than what stands in it.
  const [first] = [...odd].sort((a, b) => Number(isCompressor(a.part)) - Number(isCompressor(b.part)));
  if (!first) return;
  const { part, stretch, behind } = first;
  const may = belongs[part.kind.kind]!.map((each) => where[each]);
  const twice = belongs[part.kind.kind]!.includes(stretch);
  const said = twice
    ? `${part.name} stands ${where[stretch]} both times that the flow meets it, and it turns the flow round only with hot gas in one of its ways: it belongs once ${may.join(' and once ')}.`
    : `${part.name} stands ${where[stretch]} in the order of flow, and no ${part.kind.kind} does: it belongs ${may.join(' or ')}.`;
  whole.reportPart(part.index, {
    message: `${said} Move its statement or its neighbour's, or name its kind.`,
    root: `order ${circuit.name ?? ''}`,
    concerns: [part.index],
    related: [
      ...(behind ? [{ part: behind.index, message: 'the stretch begins behind this part' }] : []),
      ...odd.flatMap((each) => (each === first ? [] : [{ part: each.part.index, message: 'out of order with it' }])),
    ],
  });
}
