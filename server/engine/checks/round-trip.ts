import { neighbours } from '../circuit/spaces';
import type { Plant } from '../circuit/state';
import { isCompressor } from './plant';

/** How far the gas of a compressor gets on its way round the circuit. */
export interface RoundTrip {
  readonly comesBack: boolean;
  /** Parts that it passed, in the order in which it met them. */
  readonly passed: readonly number[];
  /** Parts with a shut valve that it stopped at. */
  readonly shut: readonly number[];
}

/**
 * Follows the gas from a compressor's outlet to its inlet, past what hands left shut. Valves under control open when the
 * machine runs, a check valve lets the flow through, and another compressor none back; those of `opened` are taken for open.
 */
export function roundTrip(plant: Plant, compressor: number, opened: ReadonlySet<number> = new Set()): RoundTrip {
  const { graph } = plant;
  const [inlet, outlet] = graph.parts[compressor]!.ends;
  const passed: number[] = [];
  const shut: number[] = [];
  const seen = new Set<number>();
  const queue = outlet === undefined ? [] : [outlet];
  const passes = (end: number): boolean => {
    const { part, side } = graph.ends[end]!;
    const { kind } = graph.parts[part]!;
    const seat = side === 'outlet' && kind.shuts !== 'driven' && plant.parts[part]!.position === 'shut';
    if (opened.has(part) || (plant.ends[end]!.valve !== 'shut' && !seat)) return true;
    shut.push(part);
    return false;
  };
  for (let end = queue.shift(); end !== undefined; end = queue.shift()) {
    if (seen.has(end)) continue;
    seen.add(end);
    const { part } = graph.ends[end]!;
    if (plant.parts[part]!.mounted === 'none' || !plant.ends[end]!.attached || !passes(end)) continue;
    passed.push(part);
    for (const other of neighbours(plant, end)) {
      if (plant.parts[graph.ends[other]!.part]!.mounted === 'none' || !plant.ends[other]!.attached) continue;
      if (!passes(other)) continue;
      if (other === inlet) return { comesBack: true, passed, shut };
      if (isDischarge(plant, other)) continue;
      queue.push(other ^ 1);
    }
  }
  return { comesBack: false, passed, shut };
}

/** What a compressor draws from: the parts before its inlet, as far as hands have shut nothing, and the valves that it stops at. */
export function drawnFrom(plant: Plant, compressor: number): Omit<RoundTrip, 'comesBack'> {
  const { graph } = plant;
  const passed: number[] = [];
  const shut: number[] = [];
  const seen = new Set<number>();
  const queue = [graph.parts[compressor]!.ends[0]!];
  const stops = (end: number): boolean => {
    const { part } = graph.ends[end]!;
    const seat = graph.parts[part]!.kind.shuts === 'hand' && plant.parts[part]!.position === 'shut';
    const isShut = seat || plant.ends[end]!.valve === 'shut';
    if (isShut) shut.push(part);
    return isShut;
  };
  for (let end = queue.shift(); end !== undefined; end = queue.shift()) {
    if (seen.has(end) || stops(end)) continue;
    seen.add(end);
    for (const other of neighbours(plant, end)) {
      const { part } = graph.ends[other]!;
      if (stops(other) || isCompressor(graph.parts[part]!)) continue;
      passed.push(part);
      queue.push(other ^ 1);
    }
  }
  return { passed, shut };
}

/** The outlet of another compressor, whose own valves let no gas back into it. */
const isDischarge = ({ graph }: Plant, end: number): boolean => {
  const { part, side } = graph.ends[end]!;
  return side === 'outlet' && isCompressor(graph.parts[part]!);
};

/** The valves that hands left shut in a compressor's way, all that it would meet; none where its gas comes back, or a gap keeps it from that. */
export function shutInWay(plant: Plant, compressor: number): readonly number[] {
  const found = new Set<number>();
  for (;;) {
    const { comesBack, shut } = roundTrip(plant, compressor, found);
    if (comesBack) return [...found];
    if (shut.length === 0) return [];
    for (const part of shut) found.add(part);
  }
}
