import { nitrogenGasConstant, nitrogenHeatRatio } from '../reference/nitrogen-practice';
import { frictionFactor } from './friction';
import { nitrogen } from './gas';

/** Density of nitrogen in kg/m3: from the tables, and as an ideal gas under 1 kPa where they end. Null above 35 MPa. */
export const nitrogenDensity = (pressure: number, temperature: number): number | null =>
  pressure < nitrogen.pressureRange[0]
    ? pressure / (nitrogenGasConstant * temperature)
    : nitrogen.density(pressure, temperature);

/** Back pressure over supply below which an opening chokes: (2/(γ+1))^(γ/(γ-1)), 0.528 for nitrogen. */
export const criticalRatio = (2 / (nitrogenHeatRatio + 1)) ** (nitrogenHeatRatio / (nitrogenHeatRatio - 1));

/**
 * Nitrogen through an opening in kg/s from `supply` to `back` (Pa absolute): choked where back/supply is under 0.528,
 * else the subsonic nozzle formula. `coefficient` is the discharge coefficient. Ideal gas; text-book form.
 */
export const openingFlow = (
  area: number,
  supply: number,
  back: number,
  temperature: number,
  coefficient: number,
): number => {
  if (supply <= back) return 0;
  const gamma = nitrogenHeatRatio;
  const ratio = Math.max(back / supply, criticalRatio);
  const speed = Math.sqrt(
    ((2 * gamma) / (gamma - 1) / (nitrogenGasConstant * temperature)) *
      (ratio ** (2 / gamma) - ratio ** ((gamma + 1) / gamma)),
  );
  return coefficient * area * supply * speed;
};

/** Isothermal flow with friction in kg/s from `inlet` to `outlet` pressure over a length of tube. */
const lineFlow = (bore: number, length: number, inlet: number, outlet: number, temperature: number): number => {
  const area = (Math.PI / 4) * bore ** 2;
  const viscosity = nitrogen.viscosity(Math.min(inlet, 5e6), temperature) ?? 1.78e-5;
  let flow = 0;
  let factor = 0.02;
  // The factor hardly depends on the flow, so that a handful of turns settles it.
  for (let turn = 0; turn < 4; turn++) {
    const loss = (factor * length) / bore + 2 * Math.log(inlet / outlet);
    flow = area * Math.sqrt((inlet ** 2 - outlet ** 2) / (nitrogenGasConstant * temperature * loss));
    factor = frictionFactor(((flow / area) * bore) / viscosity, bore);
  }
  return flow;
};

export interface Purge {
  /** kg/s */
  readonly flow: number;
  /** Pressure before the opening, Pa absolute. */
  readonly endPressure: number;
  readonly choked: boolean;
}

/**
 * Steady nitrogen through a line that ends in an opening: the pressure before the opening at which line and opening
 * pass the same, by bisection. Without a length the opening alone counts.
 */
export const purgeThrough = (
  line: { readonly bore: number; readonly length: number } | null,
  opening: { readonly area: number; readonly coefficient: number },
  supply: number,
  back: number,
  temperature: number,
): Purge => {
  const key = `${line?.bore} ${line?.length} ${opening.area} ${opening.coefficient} ${supply} ${back} ${temperature}`;
  let purge = purges.get(key);
  if (!purge) {
    purge = solvePurge(line, opening, supply, back, temperature);
    if (purges.size > 1000) purges.clear();
    purges.set(key, purge);
  }
  return purge;
};

/** Purges by what they follow from: a plan purges the same lines again and again. Emptied before it grows large. */
const purges = new Map<string, Purge>();

const solvePurge = (
  line: { readonly bore: number; readonly length: number } | null,
  opening: { readonly area: number; readonly coefficient: number },
  supply: number,
  back: number,
  temperature: number,
): Purge => {
  const through = (pressure: number): number =>
    openingFlow(opening.area, pressure, back, temperature, opening.coefficient);
  let end = supply;
  if (line !== null && line.length > 0 && supply > back) {
    let low = back;
    let high = supply;
    for (let turn = 0; turn < 32; turn++) {
      const middle = (low + high) / 2;
      if (through(middle) < lineFlow(line.bore, line.length, supply, middle, temperature)) low = middle;
      else high = middle;
    }
    end = (low + high) / 2;
  }
  return { flow: through(end), endPressure: end, choked: back / end <= criticalRatio };
};
