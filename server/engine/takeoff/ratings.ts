import type { Part } from '../circuit/graph';
import { isLine } from '../circuit/kinds';
import type { Plant } from '../circuit/state';
import type { Head } from '../plan/plan';
import { fahrenheit } from '../reference/table-units';
import { allowableStress } from '../reference/tube-stress';

/** What bears the least of what gas reaches. Pa absolute. */
export interface Weakest {
  readonly part: number;
  readonly limit: number;
  readonly why: string;
}

/** Test nitrogen and tube stand at about this when nobody says otherwise; the first row of the table of stresses. */
const testTemperature = fahrenheit(100);
/**
 * A test may go over the design pressure of a part that states no rating: codes ask 1.1 to 1.3 times it (ASME B31.5, from
 * memory; federal guide specification 15652A: at most 25 % over). Above that the part is overloaded.
 */
const overDesign = 1.3;

/** The least rating among parts, by what the plan states of them; null where it states nothing that binds. */
export const weakest = (plan: Head, plant: Plant, parts: readonly number[]): Weakest | null =>
  limitsOf(plan, plant, parts)[0] ?? null;

/** What binds each part that something is known of, the weakest first; of parts that bear alike by one reason the first. */
export function limitsOf(plan: Head, plant: Plant, parts: readonly number[]): readonly Weakest[] {
  const found = new Map<string, Weakest>();
  for (const index of parts) {
    const limit = limitOf(plan, plant, plan.graph.parts[index]!);
    const key = limit && `${limit.limit} ${limit.why}`;
    if (limit && key && !found.has(key)) found.set(key, { part: index, ...limit });
  }
  return [...found.values()].sort((a, b) => a.limit - b.limit);
}

function limitOf(plan: Head, plant: Plant, part: Part): Omit<Weakest, 'part'> | null {
  const { atmosphere } = plant;
  const limits: Omit<Weakest, 'part'>[] = [];
  const { rated, relief, tube } = part.properties;
  const isNewNow = plant.parts[part.index]!.mounted === 'new' || part.standing === 'kept';
  if (rated !== undefined && isNewNow) limits.push({ limit: rated, why: 'its rating' });
  if (relief !== undefined && !plant.bypassed.has('relief-valves') && !plant.bypassed.has(part.name))
    limits.push({ limit: relief, why: 'the setting of its relief valve' });
  if (isLine(part.kind) && tube) {
    const stress = allowableStress('annealed', testTemperature);
    if (stress !== null)
      limits.push({
        limit: atmosphere + (2 * stress * tube.wall) / (tube.outside - 0.8 * tube.wall),
        why: `the working pressure of ${tube.shown} tube`,
      });
  }
  const equipment = part.kind.group === 'coil' || isCompressor(part);
  if (rated === undefined && plan.system.rated && (equipment || part.kind.group === 'metering'))
    limits.push({ limit: plan.system.rated.quantity.low, why: 'the rating of the system' });
  else if (rated === undefined && equipment && part.standing === 'kept') {
    // A compressor's shell or a coil of the low side bears the low side's pressure, whatever side the gas comes from.
    // In a heat pump every coil is the high side one way round.
    const turns = plan.graph.parts.some(
      (each) => each.kind.kind === 'reversing-valve' && each.circuit === part.circuit,
    );
    const low = isCompressor(part) || (!part.highSide && !turns);
    const design = low ? plan.system.designLow : plan.system.designHigh;
    if (design)
      limits.push({
        limit: atmosphere + (design.quantity.low - atmosphere) * overDesign,
        why: `${overDesign} times the design pressure of its side`,
      });
  }
  return limits.reduce<Omit<Weakest, 'part'> | null>(
    (most, each) => (most && most.limit <= each.limit ? most : each),
    null,
  );
}

const isCompressor = (part: Part): boolean => part.kind.kind === 'compressor';
