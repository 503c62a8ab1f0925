import type { CircuitSpec, Part, Series } from '../../circuit/graph';
import { defineCheck, type Whole } from '../define';
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
  evaporator: ['fed', 'vapour'],
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
    const { graph } = whole.plan;
    graph.circuits.forEach((circuit, at) => {
      const parts = graph.parts.filter((part) => part.circuit === at);
      if (circuit.untouched || !parts.some(isCompressor)) return;
      const metered = parts.filter((part) => part.kind.group === 'metering').length;
      const round = new Round(parts);
      // The circuit closes: what it ends with it begins with.
      round.go(circuit.series, null);
      const begins = round.ends;
      round.misplaced.length = 0;
      round.go(circuit.series, begins);
      if (round.misplaced.length > 0) report(whole, circuit, round.misplaced, metered);
    });
  },
});

interface Misplaced {
  readonly part: Part;
  readonly stretch: Stretch;
  /** The part that the stretch begins behind. */
  readonly behind: Part | null;
}

/** One way round a circuit, keeping what flows. */
class Round {
  readonly misplaced: Misplaced[] = [];
  ends: Stretch | null = null;
  private behind: Part | null = null;
  private readonly named: ReadonlyMap<string, Part>;

  constructor(parts: readonly Part[]) {
    this.named = new Map(parts.map((part) => [part.name, part]));
  }

  go(series: Series, begins: Stretch | null): void {
    this.ends = this.through(series, begins);
  }

  private through(series: Series, begins: Stretch | null): Stretch | null {
    let stretch = begins;
    for (const item of series) {
      if (item.type === 'part') stretch = this.pass(this.named.get(item.part.name), stretch);
      else if (item.type === 'parallel') {
        const from = stretch;
        const ends = item.branches.map((branch) => this.through(branch.series, from));
        stretch = ends.every((each) => each === ends[0]) ? (ends[0] ?? from) : null;
      }
    }
    return stretch;
  }

  private pass(part: Part | undefined, stretch: Stretch | null): Stretch | null {
    if (!part || part.standing === 'removed') return stretch;
    const may = belongs[part.kind.kind];
    if (stretch && may && !may.includes(stretch)) this.misplaced.push({ part, stretch, behind: this.behind });
    const next = behindOf(part, stretch);
    if (next !== stretch) this.behind = part;
    return next;
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

function report(whole: Whole, circuit: CircuitSpec, all: readonly Misplaced[], metered: number): void {
  // Between two metering devices, one for each way of a heat pump, liquid is held and seen as well.
  const odd = all.filter(({ part, stretch }) => stretch !== 'fed' || metered < 2 || part.kind.group === 'line');
  // What a circuit is begun with is right more often than what stands in it.
  const [first] = [...odd].sort((a, b) => Number(isCompressor(a.part)) - Number(isCompressor(b.part)));
  if (!first) return;
  const { part, stretch, behind } = first;
  const may = belongs[part.kind.kind]!.map((each) => where[each]);
  whole.reportPart(part.index, {
    message: `${part.name} stands ${where[stretch]} in the order of flow, and no ${part.kind.kind} does: it belongs ${may.join(' or ')}. Move its statement or its neighbour's, or name its kind.`,
    root: `order ${circuit.name ?? ''}`,
    concerns: [part.index],
    related: [
      ...(behind ? [{ part: behind.index, message: 'the stretch begins behind this part' }] : []),
      ...odd.flatMap((each) => (each === first ? [] : [{ part: each.part.index, message: 'out of order with it' }])),
    ],
  });
}
