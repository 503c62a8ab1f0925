import { bubblePressure, bubbleTemperature } from '../../properties';
import { subcoolingDefault } from '../../reference/charging';
import { relation } from '../relation';

/** Subcooling left at the metering device, K: below nothing the liquid flashes before it. */
export const subcoolingLeft = relation({
  name: 'subcooling-left',
  title: 'Subcooling left at the metering device',
  group: 13,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    condensing: { kind: 'temperature', title: 'condensing temperature', from: '`condensing` of the system' },
    subcooling: {
      kind: 'temperature-difference',
      title: 'subcooling at the condenser',
      from: '`subcooling` of the system',
      default: subcoolingDefault,
      valid: [0, 60],
    },
    losses: {
      kind: 'pressure-difference',
      title: 'pressure lost on the way',
      from: '`length` and `rise` of the liquid line',
      several: true,
    },
  },
  output: 'temperature-difference',
  formula: 'bubble temperature at (bubble pressure at condensing - losses) - (condensing - subcooling)',
  validity: 'within the range of the tables; no heat into the line',
  sources: ['property tables of the refrigerant'],
  confidence: 'computed',
  assumptions: ['the liquid keeps its temperature'],
  examples: [
    {
      inputs: { refrigerant: 'R-22', condensing: '105 degF', subcooling: '10 Δ°F', losses: ['0 psi'] },
      expect: '10 Δ°F',
      tolerance: 1e-4,
      source: 'limit: nothing lost',
    },
    {
      inputs: { refrigerant: 'R-22', condensing: '105 degF', subcooling: '15 Δ°F', losses: ['20 psi', '9 psi'] },
      expect: '5 Δ°F',
      tolerance: 0.02,
      source: 'by hand on handbook 3.5: 210.8 less 29 is 181.8 psig, which boils at 95 °F; the liquid has 90',
    },
  ],
  compute: ({ refrigerant, condensing, subcooling, losses }, { say }) => {
    const lost = losses.reduce((sum, one) => sum + one, 0);
    const pressure = bubblePressure(refrigerant, condensing);
    const bubble = pressure === null ? null : bubbleTemperature(refrigerant, pressure - lost);
    if (bubble === null) return { refused: `The tables of ${refrigerant.name} do not reach that far.` };
    const value = bubble - (condensing - subcooling);
    return {
      value,
      workings: () => [
        `bubble pressure at ${say('temperature', condensing)} = ${say('pressure', pressure!)}, less ${say('pressure-difference', lost)}`,
        `at ${say('pressure', pressure! - lost)} it boils at ${say('temperature', bubble)}`,
        `${say('temperature', bubble)} - ${say('temperature', condensing - subcooling)} = ${say('temperature-difference', value)}`,
      ],
    };
  },
});
