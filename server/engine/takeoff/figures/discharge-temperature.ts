import { bubblePressure, dewPressure, superheatedVapour } from '../../properties';
import { superheatDefault } from '../../reference/charging';
import { fact } from '../../reference/fact';
import { isentropicEnthalpy, temperatureOfEnthalpy } from '../isentropic';
import { relation } from '../relation';

const usualEfficiency = fact(
  'share',
  0.6,
  0.75,
  'isentropic efficiency of small compressors, 60 to 75 %: from memory',
  'memory',
);

const examplesAt = (refrigerant: string, efficiency: string, expect: string) => ({
  inputs: { refrigerant, evaporating: '40 degF', superheat: '10 Δ°F', condensing: '105 degF', efficiency },
  expect,
  tolerance: 1.5e-3,
  source: 'CoolProp 8.0.0, reference equation of state, isentropic enthalpy at the discharge pressure',
});

/** Temperature of the discharge gas, K, as an estimate from an assumed efficiency. */
export const dischargeTemperature = relation({
  name: 'discharge-temperature',
  title: 'Discharge temperature, an estimate',
  group: 15,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    evaporating: { kind: 'temperature', title: 'evaporating temperature', from: '`evaporating` of the system' },
    superheat: {
      kind: 'temperature-difference',
      title: 'superheat at the compressor',
      from: '`superheat` of the system',
      default: superheatDefault,
      valid: [0, 60],
    },
    condensing: { kind: 'temperature', title: 'condensing temperature', from: '`condensing` of the system' },
    efficiency: {
      kind: 'share',
      title: 'efficiency of the compression',
      from: 'nothing in the plan',
      default: usualEfficiency,
      valid: [0.2, 1],
    },
  },
  output: 'temperature',
  formula: 'h₂ = h₁ + (h isentropic - h₁) / efficiency; the temperature that goes with it at the discharge pressure',
  validity: 'one stage without injection or cooling of the head; discharge up to 80 K above its dew point',
  sources: ['property tables of the refrigerant; dh = v dp without loss'],
  confidence: 'computed',
  assumptions: [
    'all loss heats the gas',
    'suction gas at the superheat stated',
    'condensing temperature by the bubble line',
  ],
  examples: [
    examplesAt('R-22', '100 %', '143.6 degF'),
    examplesAt('R-22', '70 %', '166.2 degF'),
    examplesAt('R-134a', '70 %', '138.3 degF'),
    examplesAt('R-32', '100 %', '164.9 degF'),
    examplesAt('R-32', '70 %', '189.6 degF'),
  ],
  compute: ({ refrigerant, evaporating, superheat, condensing, efficiency }, { say }) => {
    const suction = dewPressure(refrigerant, evaporating);
    const discharge = bubblePressure(refrigerant, condensing);
    const temperature = evaporating + superheat;
    const state = suction === null ? null : superheatedVapour(refrigerant, suction, temperature);
    const refused = { refused: `The tables of ${refrigerant.name} do not reach the discharge of this compression.` };
    if (suction === null || discharge === null || state === null) return refused;
    const ideal = isentropicEnthalpy(refrigerant, suction, temperature, discharge);
    if (ideal === null) return refused;
    const enthalpy = state.enthalpy + (ideal - state.enthalpy) / efficiency;
    const value = temperatureOfEnthalpy(refrigerant, discharge, enthalpy, temperature);
    if (value === null) return refused;
    return {
      value,
      workings: () => [
        `from ${say('pressure', suction)}, ${say('temperature', temperature)} to ${say('pressure', discharge)}`,
        `heat content rises by ${say('enthalpy', ideal - state.enthalpy)} without loss, by ${say('enthalpy', enthalpy - state.enthalpy)} at ${say('share', efficiency)}`,
        `at that heat content and pressure: ${say('temperature', value)}`,
      ],
    };
  },
});
