import { farEnd, nearEnd, type Part } from '../circuit/graph';
import { cellVolume } from '../circuit/settle';
import { cellOf, hasGap, partOfCell, spaces, way } from '../circuit/spaces';
import { standardTemperature } from '../properties';
import { nitrogenDensity, purgeThrough } from '../properties/gas-flow';
import type { Quantity } from '../quantity';
import { psi } from '../reference/table-units';
import type { Flow } from './events';
import type { Act } from './verb';

/**
 * A purge takes the last solvent out when it is driven at the common 100 psig (handbook 5.2, common practice) and changes
 * the gas in the line at least ten times (6.3: 5 to 10 changes), or when it runs for the half hour that public service
 * manuals give a drying purge at low flow (handbook 5.2, S:54). A cited maker's sheet stands in place of the pressure.
 */
export const finalPurgePressure = 100 * psi;
export const finalPurgeChanges = 10;
export const dryingPurgeTime = 1800;
/** Discharge coefficient of the hole, as handbook 6.4 counts it; a sharp edge passes less, a rounded one more (0.6 to 0.9). */
const dischargeCoefficient = 0.8;

export interface FlowRequest {
  readonly medium: Flow['medium'];
  readonly purpose: Flow['purpose'];
  readonly line: Part;
  readonly from: 'near end' | 'far end';
  readonly level: Quantity | null;
  readonly time: Quantity | null;
  readonly container: boolean;
  readonly outdoors: boolean;
  readonly per: boolean;
  readonly gas?: string | undefined;
}

/** Follows what is let in at one end of a line to every way out, over made joints and open valves, as the plant stands. */
export function follow(act: Act, request: FlowRequest): Flow {
  const plant = act.draft.now();
  const { graph } = plant;
  const { line } = request;
  const inlet = request.from === 'near end' ? nearEnd(line) : farEnd(line);
  const end = graph.ends[inlet]!;
  const closure = plant.ends[inlet]!.closure;
  const inletOpen =
    plant.parts[line.index]!.mounted !== 'none' &&
    end.joint >= 0 &&
    hasGap(plant, end.joint) &&
    closure?.kind !== 'cap' &&
    closure?.kind !== 'plug' &&
    closure?.kind !== 'pinch';
  const from = cellOf(inlet);
  const space = spaces(plant).find((each) => each.cells.includes(from));
  const openings = space?.openings.filter((opening) => opening.end !== inlet) ?? [];
  const outlets = openings.flatMap((opening) => {
    const chain = way(plant, from, opening);
    return chain ? [{ opening, chain: [...new Set(chain.map((cell) => partOfCell(graph, cell).index))] }] : [];
  });
  const level = request.level?.low ?? null;
  let volumeChanges: number | null = null;
  const [only] = outlets;
  // A purge of half an hour dries whatever the volume, also of a coil whose volume nobody states.
  const isLong = (request.time?.low ?? 0) >= dryingPurgeTime;
  let dries = request.medium === 'nitrogen' && level !== null && isLong && only !== undefined;
  if (
    request.medium === 'nitrogen' &&
    level !== null &&
    request.time &&
    only?.opening.diameter &&
    line.properties.tube &&
    line.properties.length !== undefined
  ) {
    const bore = line.properties.tube.bore;
    const area = (Math.PI / 4) * only.opening.diameter ** 2;
    const { flow } = purgeThrough(
      { bore, length: line.properties.length },
      { area, coefficient: dischargeCoefficient },
      level,
      plant.atmosphere,
      standardTemperature,
    );
    const filling = (nitrogenDensity(level, standardTemperature) ?? 0) * cellVolume(graph, from);
    volumeChanges = filling > 0 ? (flow * request.time.low) / filling : null;
    const strong = request.per || level - plant.atmosphere >= finalPurgePressure * 0.98;
    dries = isLong || (strong && volumeChanges !== null && volumeChanges >= finalPurgeChanges);
  }
  return {
    type: 'flows',
    medium: request.medium,
    gas: request.gas ?? 'nitrogen',
    purpose: request.purpose,
    line: line.index,
    inlet,
    inletOpen,
    outlets,
    reached: space?.parts ?? [line.index],
    level,
    time: request.time,
    container: request.container,
    outdoors: request.outdoors,
    dries,
    volumeChanges,
  };
}

/** Wets all that a flush went through; where it had no way out, the line itself. Oil and acid go with the solvent. */
export function wet(act: Act, flow: Flow): void {
  const through = flow.outlets.length > 0 ? new Set(flow.outlets.flatMap((outlet) => outlet.chain)) : [flow.line];
  const from = flow.inlet === nearEnd(act.draft.graph.parts[flow.line]!) ? 'near end' : 'far end';
  for (const each of through) {
    const { wet: already, unpurged } = act.draft.part(each);
    act.draft.setPart(each, {
      wet: already ?? act.cause,
      unpurged: { by: act.cause, from: unpurged && unpurged.from !== from ? 'both ends' : from },
      finalPurge: null,
      residue: { oil: null, share: 0, acid: false },
    });
  }
}
