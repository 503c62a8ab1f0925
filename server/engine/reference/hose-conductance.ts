import type { Confidence } from './source';

/**
 * Conductance of a long round tube for air at 20 °C, in m3/s with lengths in m and pressures in Pa.
 * Molecular 12.1 d³/l and viscous 137 d⁴ p/l are printed in L/s with centimetres and millibar:
 * 12.1e-3 m3/s per cm² is 121 m3/s per m² (d³/l has the dimension of an area), and
 * 137e-3 × 1e6 / 100 is 1370 per m³ (d⁴/l) and Pa.
 */
export const molecularFactor = 121;
export const viscousFactor = 1370;
export const hoseConductanceSource =
  'vacuum physics notes: molecular 12.1 d³/L (published), laminar 137 d⁴ p/L (from memory); d, L in cm, p in mbar, L/s';
export const hoseConductanceConfidence: Confidence = 'memory';
/** A hose shorter than this many bores is lengthened by 4/3 of its bore for the resistance of its mouth. */
export const shortHose = 20;
