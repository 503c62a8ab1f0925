import {
  bubblePressure,
  dewPressure,
  liquidDensity,
  liquidEnthalpy,
  type Refrigerant,
  superheatedVapour,
} from '../properties';
import { subcoolingDefault, superheatDefault } from '../reference/charging';

/** Working temperatures in K: evaporating by the dew line, condensing by the bubble line. Differences in K. */
export interface Working {
  readonly evaporating: number;
  readonly superheat: number;
  readonly condensing: number;
  readonly subcooling: number;
}

export interface Duty {
  /** Heat taken up by a kilogram, and what vapour and liquid bring and take, J/kg. */
  readonly effect: number;
  readonly vapourEnthalpy: number;
  readonly liquidEnthalpy: number;
  /** Of the suction vapour, kg/m3 and Pa s. */
  readonly suctionDensity: number;
  /** Of the liquid that comes to the metering device, kg/m3. */
  readonly liquidDensity: number;
  readonly suctionViscosity: number;
  /** Pa absolute. */
  readonly suctionPressure: number;
  readonly dischargePressure: number;
}

/** What a kilogram of refrigerant does between two temperatures; null where the tables do not reach. */
export const dutyOf = (refrigerant: Refrigerant, working: Working): Duty | null => {
  const suctionPressure = dewPressure(refrigerant, working.evaporating);
  const dischargePressure = bubblePressure(refrigerant, working.condensing);
  const liquid = liquidEnthalpy(refrigerant, working.condensing - working.subcooling);
  const density = liquidDensity(refrigerant, working.condensing - working.subcooling);
  if (suctionPressure === null || dischargePressure === null || liquid === null || density === null) return null;
  const suction = superheatedVapour(refrigerant, suctionPressure, working.evaporating + working.superheat);
  if (suction === null || suction.enthalpy <= liquid) return null;
  return {
    effect: suction.enthalpy - liquid,
    vapourEnthalpy: suction.enthalpy,
    liquidEnthalpy: liquid,
    suctionDensity: suction.density,
    liquidDensity: density,
    suctionViscosity: suction.viscosity,
    suctionPressure,
    dischargePressure,
  };
};

/** The inputs of a relation that works between two temperatures. */
export const workingInputs = {
  evaporating: { kind: 'temperature', title: 'evaporating temperature', from: '`evaporating` of the system' },
  superheat: {
    kind: 'temperature-difference',
    title: 'superheat',
    from: '`superheat` of the system',
    default: superheatDefault,
    valid: [0, 60],
  },
  condensing: { kind: 'temperature', title: 'condensing temperature', from: '`condensing` of the system' },
  subcooling: {
    kind: 'temperature-difference',
    title: 'subcooling',
    from: '`subcooling` of the system',
    default: subcoolingDefault,
    valid: [0, 60],
  },
} as const;

export const workingAssumption = 'evaporating temperature by the dew line, condensing temperature by the bubble line';
