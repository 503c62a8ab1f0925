import { relation } from '../relation';

/** The lowest rating among the parts that the gas reaches, Pa absolute. */
export const lowestRating = relation({
  name: 'lowest-rating',
  title: 'Lowest rating in reach',
  group: 8,
  inputs: {
    ratings: {
      kind: 'pressure',
      title: 'rating',
      from: '`rated` of the parts, `design-pressure` of the system',
      several: true,
    },
  },
  output: 'pressure',
  formula: 'p = the least of the ratings',
  validity: 'all parts that stand open to the gas',
  sources: ['ratings stated in the plan'],
  confidence: 'published',
  assumptions: ['a part without a stated rating is not counted: see what the plan leaves out'],
  examples: [
    {
      inputs: { ratings: ['500 psig', '250 psig', '400 psig'] },
      expect: '250 psig',
      tolerance: 1e-9,
      source: 'by hand',
    },
  ],
  compute: ({ ratings }, { say }) => {
    const value = Math.min(...ratings);
    return {
      value,
      workings: () => [`least of ${ratings.map((one) => say('pressure', one)).join(', ')} = ${say('pressure', value)}`],
    };
  },
});
