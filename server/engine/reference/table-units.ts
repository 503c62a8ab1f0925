/**
 * Factors to SI for the units that printed tables use, so that a row can be compared with its source as it stands there.
 * Exact by definition (NIST SP 811) unless said otherwise.
 */
export const inch = 0.0254;
export const foot = 0.3048;
export const millimetre = 1e-3;
export const cubicFoot = foot ** 3;
export const litre = 1e-3;
/** US fluid ounce: a US gallon of 231 in³ has 128. */
export const fluidOunce = (231 * inch ** 3) / 128;
export const pound = 0.45359237;
export const ounce = pound / 16;
export const minute = 60;
export const hour = 3600;
export const day = 86400;
export const bar = 1e5;
/** lbf/in² with the standard acceleration of 9.80665 m/s². */
export const psi = (pound * 9.80665) / inch ** 2;
/** Conventional inch of mercury at 0 °C. */
export const inchOfMercury = 3386.389;
/** 0.001 mm of mercury. */
export const micron = 101325 / 760 / 1000;
export const standardAtmosphere = 101325;
export const feetPerMinute = foot / minute;
export const cubicFeetPerHour = cubicFoot / hour;
export const cubicFeetPerMinute = cubicFoot / minute;
/** A temperature in °F as kelvin. */
export const fahrenheit = (degrees: number): number => (degrees + 459.67) / 1.8;
/** A temperature in °C as kelvin. */
export const celsius = (degrees: number): number => degrees + 273.15;
/** A difference of one °F in kelvin. */
export const fahrenheitDifference = 1 / 1.8;
/** A gauge pressure in psig, against the standard atmosphere, as Pa absolute. */
export const psig = (pressure: number): number => pressure * psi + standardAtmosphere;
