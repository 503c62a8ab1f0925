import { liquidDensity, vapourDensity } from '../../properties';
import { relation } from '../relation';

/** Refrigerant that stands in a volume as liquid or as vapour, kg. */
export const lineContent = relation({
  name: 'line-content',
  title: 'Refrigerant in a line or part',
  group: 10,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    volume: {
      kind: 'volume',
      as: 'ft3',
      title: 'volume',
      from: '`tube` and `length` of the line, `volume` of the part',
    },
    temperature: {
      kind: 'temperature',
      title: 'saturation temperature',
      from: '`condensing` or `evaporating` of the system',
    },
    phase: { kind: 'word', title: 'phase', from: 'liquid or vapour' },
  },
  output: 'mass',
  formula: 'm = volume × saturated density',
  validity: 'one phase, saturated',
  sources: ['density from the property tables'],
  confidence: 'computed',
  assumptions: ['the volume is full of the one phase'],
  examples: [
    {
      inputs: { refrigerant: 'R-22', volume: '1 m3', temperature: '77 degF', phase: 'liquid' },
      expect: '1191 kg',
      tolerance: 1e-3,
      source: 'handbook 3.5, density at 77 °F',
    },
  ],
  compute: ({ refrigerant, volume, temperature, phase }, { say }) => {
    if (phase !== 'liquid' && phase !== 'vapour')
      return { refused: `\`${phase}\` is no phase; liquid or vapour belongs here.` };
    const density = (phase === 'liquid' ? liquidDensity : vapourDensity)(refrigerant, temperature);
    if (density === null)
      return { refused: `The tables of ${refrigerant.name} give no density at ${say('temperature', temperature)}.` };
    return {
      value: volume * density,
      workings: () => [
        `${say('volume', volume, 'ft3')} × ${say('density', density)} = ${say('mass', volume * density)}`,
      ],
    };
  },
});
