import { relation } from '../relation';

/** Charge to add for several liquid lines, kg. */
export const lineAllowanceInAll = relation({
  name: 'line-allowance-in-all',
  title: 'Charge to add for the lines',
  group: 10,
  inputs: {
    lines: {
      kind: 'mass',
      as: 'oz',
      title: 'addition for a line',
      from: '`tube` and `length` of the liquid lines',
      several: true,
    },
  },
  output: 'mass',
  outputUnit: 'oz',
  formula: 'm = sum over the liquid lines, each by its own bore',
  validity: 'lines of several sizes; the included length is used up by the longest line first',
  sources: ['arithmetic on the line allowance'],
  confidence: 'practice',
  assumptions: ['the maker’s included length counts the main line before the branches'],
  examples: [{ inputs: { lines: ['10 oz', '4 oz', '0 oz'] }, expect: '14 oz', tolerance: 1e-9, source: 'by hand' }],
  compute: ({ lines }, { say }) => {
    const value = lines.reduce((sum, one) => sum + one, 0);
    return {
      value,
      workings: () => [`${lines.map((one) => say('mass', one, 'oz')).join(' + ')} = ${say('mass', value, 'oz')}`],
    };
  },
});
