/** Pressure of the standard atmosphere at sea level, Pa. Source: ISO 2533:1975. */
export const standardAtmosphere = 101325;

// International Standard Atmosphere, troposphere. Source: ISO 2533:1975 (same below 32 km as US Standard Atmosphere 1976).
const seaLevelTemperature = 288.15; // K
const lapseRate = 0.0065; // K/m
const exponent = 9.80665 / (287.05287 * lapseRate); // g / (R of air x lapse rate)

/** The tables of the troposphere end here, m; a site beyond is taken as standing at the end. */
const lowest = -5000;
const highest = 11000;

/**
 * Pressure of the atmosphere at an altitude in m (geopotential; within 0.1 % of the surveyed one anywhere people work),
 * Pa. Weather moves it by about 3 % either way. A figure that is not a number counts as sea level.
 */
export function atmosphereAt(altitudeMetres: number): number {
  if (Number.isNaN(altitudeMetres)) return standardAtmosphere;
  const altitude = Math.min(highest, Math.max(lowest, altitudeMetres));
  return standardAtmosphere * (1 - (lapseRate * altitude) / seaLevelTemperature) ** exponent;
}
