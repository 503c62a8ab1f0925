import { relation } from '../relation';

/** Nitrogen cylinders to bring, whole. */
export const cylindersToBring = relation({
  name: 'cylinders-to-bring',
  title: 'Nitrogen cylinders to bring',
  group: 6,
  inputs: {
    nitrogen: { kind: 'volume', as: 'scf', title: 'nitrogen needed', from: 'the steps that draw it' },
    content: {
      kind: 'volume',
      as: 'scf',
      title: 'what a cylinder gives',
      from: '`water-volume` and `full` of the cylinder',
      valid: [1e-4, 1e4],
    },
  },
  output: 'count',
  formula: 'cylinders = nitrogen needed / what a cylinder gives, rounded up',
  validity: 'cylinders of one size, each given up at the highest pressure asked',
  sources: ['arithmetic on the content'],
  confidence: 'computed',
  assumptions: ['every draw asks for the same pressure; a walk from step to step may need fewer'],
  examples: [
    { inputs: { nitrogen: '240 scf', content: '234 scf' }, expect: '2', tolerance: 0, source: 'by hand' },
    { inputs: { nitrogen: '234 scf', content: '234 scf' }, expect: '1', tolerance: 0, source: 'by hand' },
  ],
  compute: ({ nitrogen, content }, { say }) => {
    const value = Math.ceil(nitrogen / content - 1e-9);
    return {
      value,
      workings: () => [
        `${say('volume', nitrogen, 'scf')} / ${say('volume', content, 'scf')} = ${(nitrogen / content).toFixed(2)}, so ${value}`,
      ],
    };
  },
});
