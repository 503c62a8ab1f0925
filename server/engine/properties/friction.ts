import { copperRoughness } from '../reference/velocity-limits';

/**
 * Friction factor (Darcy) of a round tube over laminar, transition and turbulent flow. Source: Churchill 1977.
 * `bore` and `roughness` in m.
 */
export const frictionFactor = (
  reynolds: number,
  bore: number,
  roughness: number = copperRoughness.quantity.low,
): number => {
  if (!(reynolds > 0)) return 0;
  const a = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + (0.27 * roughness) / bore))) ** 16;
  const b = (37530 / reynolds) ** 16;
  return 8 * ((8 / reynolds) ** 12 + 1 / (a + b) ** 1.5) ** (1 / 12);
};
