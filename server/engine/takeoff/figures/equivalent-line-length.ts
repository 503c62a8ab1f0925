import { equivalentLengthConfidence, equivalentLengthSource } from '../../reference/equivalent-lengths';
import { relation } from '../relation';

/** Length of straight tube with the resistance of line and fittings, m. */
export const equivalentLineLength = relation({
  name: 'equivalent-line-length',
  title: 'Equivalent length of a line',
  group: 13,
  inputs: {
    length: { kind: 'length', title: 'length', from: '`length` of the line', valid: [0, 2000] },
    fittings: {
      kind: 'length',
      title: 'equivalent length of a fitting',
      from: '`elbows` and valves of the line',
      several: true,
      optional: true,
      valid: [0, 500],
    },
  },
  output: 'length',
  formula: 'L = length + equivalent lengths of the fittings',
  validity: 'smooth tube with wrought fittings',
  sources: [equivalentLengthSource],
  confidence: equivalentLengthConfidence,
  assumptions: ['fittings far enough apart not to disturb one another'],
  examples: [
    {
      inputs: { length: '48 ft', fittings: ['8.4 ft'] },
      expect: '56.4 ft',
      tolerance: 1e-6,
      source: 'by hand on handbook 10.2: 6 long-radius elbows of 7/8 at 1.4 ft',
    },
  ],
  compute: ({ length, fittings }, { say }) => {
    const value = fittings.reduce((sum, one) => sum + one, length);
    return {
      value,
      workings: () => [
        `${[length, ...fittings].map((one) => say('length', one)).join(' + ')} = ${say('length', value)}`,
      ],
    };
  },
});
