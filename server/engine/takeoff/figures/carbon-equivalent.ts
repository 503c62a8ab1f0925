import { factsOf } from '../../reference/refrigerant-facts';
import { relation } from '../relation';

/** Mass of carbon dioxide that warms as much as a mass of refrigerant over 100 years, kg. */
export const carbonEquivalent = relation({
  name: 'carbon-equivalent',
  title: 'CO₂ equivalent',
  group: 17,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system', byNameAlone: true },
    mass: { kind: 'mass', title: 'refrigerant', from: '`charge` of the system' },
  },
  output: 'mass',
  formula: 'm = refrigerant × warming potential over 100 years (fourth assessment report)',
  validity: 'refrigerants in the table',
  sources: ['warming potentials of the fourth assessment report; blends by mass'],
  confidence: 'memory',
  assumptions: ['US rules count by the fourth report, within 1 or 2 units'],
  examples: [
    {
      inputs: { refrigerant: 'R-410A', mass: '1 kg' },
      expect: '2088 kg',
      tolerance: 1e-3,
      source: 'published exchange value of R-410A: 2088 (40 CFR 84)',
    },
    {
      inputs: { refrigerant: 'R-454B', mass: '1 kg' },
      expect: '465 kg',
      tolerance: 3e-3,
      source: 'published exchange value of R-454B: 465 (handbook 3.4)',
    },
  ],
  compute: ({ refrigerant, mass }, { say }) => {
    const facts = factsOf(refrigerant.name);
    if (facts === undefined) return { refused: `No warming potential of ${refrigerant.name} is in the tables.` };
    const value = mass * facts.warming.fourth;
    return { value, workings: () => [`${say('mass', mass)} × ${facts.warming.fourth} = ${say('mass', value)}`] };
  },
});
