import { relation } from '../relation';

/** Refrigerant that goes into recovery cylinders, kg. */
export const recoveryInAll = relation({
  name: 'recovery-in-all',
  title: 'Refrigerant to recover',
  group: 4,
  inputs: {
    masses: {
      kind: 'mass',
      title: 'refrigerant recovered by a step',
      from: '`recover-charge` of the system',
      several: true,
    },
  },
  output: 'mass',
  formula: 'm = sum of the steps',
  validity: 'what the plan says is in',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: ['what the plate says is in the machine'],
  examples: [{ inputs: { masses: ['7 lb', '2 lb'] }, expect: '9 lb', tolerance: 1e-9, source: 'by hand' }],
  compute: ({ masses }, { say }) => {
    const value = masses.reduce((sum, one) => sum + one, 0);
    return { value, workings: () => [`${masses.map((one) => say('mass', one)).join(' + ')} = ${say('mass', value)}`] };
  },
});
