import { molecularFactor, shortHose, viscousFactor } from '../reference/hose-conductance';

/** Conductance of a hose for air at 20 °C in m3/s: molecular part plus viscous part at the mean pressure (Pa). */
export const conductance = (bore: number, length: number, meanPressure: number): number => {
  const long = length < shortHose * bore ? length + (4 / 3) * bore : length;
  return (molecularFactor * bore ** 3) / long + (viscousFactor * bore ** 4 * meanPressure) / long;
};

/** Speeds and conductances in series: 1/S = 1/S pump + 1/C1 + … */
export const inSeries = (...parts: readonly number[]): number => 1 / parts.reduce((sum, one) => sum + 1 / one, 0);

export interface Hoses {
  readonly bore: number;
  readonly length: number;
  /** Alike hoses side by side. */
  readonly number: number;
}

/**
 * What is left of the pump's speed at the circuit, m3/s, at a pressure in the circuit (Pa). The gas in the hose is taken
 * at half the inlet pressure, as in the printed examples.
 */
export const speedAtCircuit = (pump: number, hoses: Hoses, pressure: number): number =>
  inSeries(pump, hoses.number * conductance(hoses.bore, hoses.length, pressure / 2));

/** Steps of the integration for each factor of e in pressure: 64 leave less than a thousandth. */
const stepsPerFold = 64;

/** Time in s to pump a dry, tight volume (m3) from `start` to `level`; null where the pump's ultimate level forbids it. */
export const pumpDown = (
  volume: number,
  pump: number,
  hoses: Hoses,
  start: number,
  level: number,
  ultimate: number,
): number | null => {
  if (level <= ultimate) return null;
  if (level >= start) return 0;
  const folds = Math.log(start / level);
  const steps = Math.ceil(folds * stepsPerFold);
  let time = 0;
  for (let step = 0; step < steps; step++) {
    // Middle of each equal step in ln p; the pump's pull fades toward its ultimate level.
    const pressure = start * Math.exp((-folds * (step + 0.5)) / steps);
    time += ((volume / speedAtCircuit(pump, hoses, pressure)) * (folds / steps)) / (1 - ultimate / pressure);
  }
  return time;
};
