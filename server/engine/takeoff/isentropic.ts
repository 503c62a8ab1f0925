import { dewTemperature, type Refrigerant, superheatedVapour } from '../properties';

/** Steps in ln p: 24 leave less than a tenth of a kelvin on the usual lift. */
const steps = 24;

/** Temperature of superheated vapour at a pressure and enthalpy, K, by the secant rule from a guess; null off the table. */
export const temperatureOfEnthalpy = (
  refrigerant: Refrigerant,
  pressure: number,
  enthalpy: number,
  guess: number,
): number | null => {
  const dew = dewTemperature(refrigerant, pressure);
  if (dew === null) return null;
  const start = Math.max(guess, dew);
  let before = start;
  let here = start + 1;
  let hBefore = superheatedVapour(refrigerant, pressure, before)?.enthalpy;
  for (let turn = 0; turn < 8; turn++) {
    const h = superheatedVapour(refrigerant, pressure, here)?.enthalpy;
    if (h === undefined || hBefore === undefined) return null;
    if (Math.abs(h - enthalpy) < 0.1 || h === hBefore) return here;
    const next = here + ((enthalpy - h) * (here - before)) / (h - hBefore);
    before = here;
    hBefore = h;
    here = Math.max(next, dew);
  }
  return here;
};

/**
 * Enthalpy after compression without loss, J/kg: dh = v dp along ln p, by the midpoint rule. From superheated vapour at
 * `pressure` and `temperature` to `discharge`; null where the tables do not reach.
 */
export const isentropicEnthalpy = (
  refrigerant: Refrigerant,
  pressure: number,
  temperature: number,
  discharge: number,
): number | null => {
  const suction = superheatedVapour(refrigerant, pressure, temperature);
  if (suction === null || discharge < pressure) return null;
  const step = Math.log(discharge / pressure) / steps;
  let enthalpy = suction.enthalpy;
  let density = suction.density;
  let p = pressure;
  let guess = temperature;
  for (let index = 0; index < steps; index++) {
    const middle = p * Math.exp(step / 2);
    const half = temperatureOfEnthalpy(refrigerant, middle, enthalpy + (p / density) * (step / 2), guess);
    const there = half === null ? null : superheatedVapour(refrigerant, middle, half);
    if (half === null || there === null) return null;
    enthalpy += (middle / there.density) * step;
    p *= Math.exp(step);
    const end = temperatureOfEnthalpy(refrigerant, p, enthalpy, half);
    const state = end === null ? null : superheatedVapour(refrigerant, p, end);
    if (end === null || state === null) return null;
    density = state.density;
    guess = end;
  }
  return enthalpy;
};
