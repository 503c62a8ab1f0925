import { liquidDensity } from '../../properties';
import { includedLength, liquidLineTemperature } from '../../reference/charging';
import { relation } from '../relation';

/** Charge to add for the liquid line beyond the length that the maker's charge includes, kg. */
export const lineAllowance = relation({
  name: 'line-allowance',
  title: 'Charge to add for the line',
  group: 10,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    bore: {
      kind: 'length',
      as: 'in',
      title: 'bore of the liquid line',
      from: '`tube` of the liquid line',
      valid: [0.5e-3, 0.3],
    },
    length: {
      kind: 'length',
      title: 'length of the liquid line',
      from: '`length` of the liquid line',
      valid: [0, 2000],
    },
    included: {
      kind: 'length',
      title: 'length that the charge includes',
      from: '`charge … for … of line` of the system',
      default: includedLength,
      valid: [0, 2000],
    },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the liquid',
      from: '`condensing` of the system',
      default: liquidLineTemperature,
    },
    perLength: {
      kind: 'mass-per-length',
      title: 'maker’s allowance',
      from: '`line-allowance` of the system',
      optional: true,
      valid: [0, 10],
    },
  },
  output: 'mass',
  outputUnit: 'oz',
  formula: 'm = π/4 × bore² × liquid density × (length - included), or the maker’s allowance × (length - included)',
  validity: 'liquid lines full of liquid; a vapour line counts only when very long',
  sources: ['density from the property tables', includedLength.source],
  confidence: 'practice',
  assumptions: ['no flash gas in the line'],
  examples: [
    {
      inputs: { refrigerant: 'R-410A', bore: '0.311 in', length: '60 ft', included: '15 ft', temperature: '95 degF' },
      expect: '23.9 oz',
      tolerance: 0.01,
      source: 'handbook section 12, WE-31',
    },
    {
      inputs: { refrigerant: 'R-22', bore: '0.311 in', length: '16 ft', included: '15 ft', temperature: '95 degF' },
      expect: '0.61 oz',
      tolerance: 0.01,
      source: 'handbook 9.1, table of oz/ft; trade tables print 0.6',
    },
    {
      inputs: { refrigerant: 'R-454B', bore: '0.311 in', length: '16 ft', included: '15 ft', temperature: '95 degF' },
      expect: '0.50 oz',
      tolerance: 0.015,
      source: 'handbook 9.1, table of oz/ft',
    },
    {
      inputs: { refrigerant: 'R-410A', bore: '0.311 in', length: '60 ft', included: '15 ft', perLength: '0.6 oz/ft' },
      expect: '27 oz',
      tolerance: 1e-6,
      source: 'handbook section 12, WE-31: the 0.6 rule',
    },
  ],
  compute: ({ refrigerant, bore, length, included, temperature, perLength }, { say }) => {
    const density = liquidDensity(refrigerant, temperature);
    if (density === null)
      return {
        refused: `The tables of ${refrigerant.name} give no liquid density at ${say('temperature', temperature)}.`,
      };
    const each = perLength ?? (Math.PI / 4) * bore ** 2 * density;
    const extra = Math.max(0, length - included);
    const value = each * extra;
    const rate = say('mass-per-length', each, 'oz/ft');
    return {
      value,
      notes:
        length < included
          ? [
              'The line is shorter than the charge includes: nothing is added; whether some is taken out, the maker’s sheet says.',
            ]
          : [],
      workings: () => [
        perLength === undefined
          ? `per length = π/4 × (${say('length', bore, 'in')})² × ${say('density', density)} = ${rate}`
          : `per length = ${rate} by the maker`,
        `${say('length', length)} - ${say('length', included)} = ${say('length', extra)}; × ${rate} = ${say('mass', value, 'oz')}`,
      ],
    };
  },
});
