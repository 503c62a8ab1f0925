import { relation } from '../relation';

/** Refrigerant that the job weighs in, kg. */
export const refrigerantInAll = relation({
  name: 'refrigerant-in-all',
  title: 'Refrigerant to weigh in',
  group: 10,
  inputs: { masses: { kind: 'mass', title: 'refrigerant of a charge', from: 'the `charge` step', several: true } },
  output: 'mass',
  formula: 'm = sum of the charges',
  validity: 'the trim while running is not in it',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: ['nothing is lost at the hoses'],
  examples: [{ inputs: { masses: ['6 lb', '1 lb'] }, expect: '7 lb', tolerance: 1e-9, source: 'by hand' }],
  compute: ({ masses }, { say }) => {
    const value = masses.reduce((sum, one) => sum + one, 0);
    return { value, workings: () => [`${masses.map((one) => say('mass', one)).join(' + ')} = ${say('mass', value)}`] };
  },
});
