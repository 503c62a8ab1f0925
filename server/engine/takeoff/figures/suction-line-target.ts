import { dewTemperature } from '../../properties';
import { relation } from '../relation';

const refrigerant = { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' } as const;
const sources = ['property tables of the refrigerant: bubble line for subcooling, dew line for superheat'];
const examplesFrom = 'by hand on the saturation values of handbook 3.5';

/** What the suction line must read for a superheat at a pressure, K. */
export const suctionLineTarget = relation({
  name: 'suction-line-target',
  title: 'Suction line temperature for the superheat',
  group: 11,
  inputs: {
    refrigerant,
    pressure: { kind: 'pressure', title: 'low-side pressure', from: 'the reading of the low side' },
    superheat: {
      kind: 'temperature-difference',
      title: 'superheat',
      from: '`superheat` of the system',
      valid: [0, 60],
    },
  },
  output: 'temperature',
  formula: 'T = dew temperature at the pressure + superheat',
  validity: 'within the range of the tables',
  sources,
  confidence: 'computed',
  assumptions: ['pressure read where the temperature is read'],
  examples: [
    {
      inputs: { refrigerant: 'R-448A', pressure: '71.2 psig', superheat: '8 Δ°F' },
      expect: '48 degF',
      tolerance: 1e-3,
      source: examplesFrom,
    },
  ],
  compute: ({ refrigerant: gas, pressure, superheat }, { say }) => {
    const dew = dewTemperature(gas, pressure);
    if (dew === null) return { refused: `The tables of ${gas.name} do not reach ${say('pressure', pressure)}.` };
    return {
      value: dew + superheat,
      workings: () => [
        `dew temperature at ${say('pressure', pressure)} = ${say('temperature', dew)}`,
        `${say('temperature', dew)} + ${say('temperature-difference', superheat)} = ${say('temperature', dew + superheat)}`,
      ],
    };
  },
});
