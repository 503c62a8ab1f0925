import gases from './data/gases.json';
import { type Domain, inside } from './series';

interface WaterTable {
  readonly psatLiquid: {
    readonly Tc: number;
    readonly pc: number;
    readonly a: readonly number[];
    readonly e: readonly number[];
  };
  readonly psatIce: {
    readonly Tt: number;
    readonly pt: number;
    readonly a: readonly number[];
    readonly e: readonly number[];
  };
}

const { psatIce: ice, psatLiquid: liquid } = (gases.fluids as unknown as { Water: WaterTable }).Water;

/** Temperatures at which the two formulas are used, K: ice from -40 degC, liquid to 150 degC. */
export const waterRange: Domain = [233.15, 423.15];

const sum = (a: readonly number[], e: readonly number[], value: number): number =>
  a.reduce((total, factor, index) => total + factor * value ** (e[index] ?? 0), 0);

/** Over ice. Source: IAPWS R14-08. */
const overIce = (temperature: number): number =>
  ice.pt * Math.exp((ice.Tt / temperature) * sum(ice.a, ice.e, temperature / ice.Tt));

/** Over liquid. Source: Wagner and Pruss, IAPWS SR1-86. */
const overLiquid = (temperature: number): number =>
  liquid.pc * Math.exp((liquid.Tc / temperature) * sum(liquid.a, liquid.e, 1 - temperature / liquid.Tc));

/** Pressure of water vapour at rest over ice (below 0.01 degC) or liquid water, Pa; null outside -40 to 150 degC. */
export function waterSaturationPressure(temperature: number): number | null {
  if (!inside(temperature, waterRange)) return null;
  return temperature < ice.Tt ? overIce(temperature) : overLiquid(temperature);
}

/**
 * Temperature at which water boils, or ice turns to vapour, under a pressure, K; null outside -40 to 150 degC. By
 * bisection, over ice or over liquid as the pressure says.
 */
export function waterBoilingTemperature(pressure: number): number | null {
  const [coldest, hottest] = waterRange;
  if (!(pressure >= overIce(coldest) && pressure <= overLiquid(hottest))) return null;
  const frozen = pressure < ice.pt;
  const over = frozen ? overIce : overLiquid;
  let low = frozen ? coldest : ice.Tt;
  let high = frozen ? ice.Tt : hottest;
  for (let turn = 0; turn < 50; turn++) {
    const middle = (low + high) / 2;
    if (over(middle) < pressure) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
