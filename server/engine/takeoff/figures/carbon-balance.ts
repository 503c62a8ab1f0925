import { factsOf } from '../../reference/refrigerant-facts';
import { relation } from '../relation';

/** CO₂ equivalent of what was in the machine and did not come out, kg. */
export const carbonBalance = relation({
  name: 'carbon-balance',
  title: 'CO₂ equivalent not accounted for',
  group: 17,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system', byNameAlone: true },
    held: { kind: 'mass', title: 'charge before the work', from: '`recover-charge` of the system' },
    added: { kind: 'mass', title: 'refrigerant charged', from: '`charged` of the record', optional: true },
    recovered: { kind: 'mass', title: 'refrigerant recovered', from: '`recovered` of the record' },
    left: { kind: 'mass', title: 'charge left in', from: '`full-charge` of the record', optional: true },
  },
  output: 'mass',
  formula: 'm = (charge before + charged - recovered - left in) × warming potential over 100 years (fourth report)',
  validity: 'one refrigerant; a new one has a balance of its own',
  sources: ['conservation of mass', 'warming potentials of the fourth assessment report; blends by mass'],
  confidence: 'memory',
  assumptions: ['the charge before the work was what the plate says', 'US rules count by the fourth report'],
  examples: [
    {
      inputs: { refrigerant: 'R-410A', held: '10 lb', recovered: '9 lb' },
      expect: '2088 lb',
      tolerance: 1e-3,
      source: 'by hand: 1 lb × 2088, the published value of R-410A (handbook 3.4)',
    },
    {
      inputs: { refrigerant: 'R-22', held: '95 lb', recovered: '90 lb', left: '5 lb' },
      expect: '0 lb',
      tolerance: 1e-9,
      source: 'limit: nothing missing',
    },
    {
      inputs: { refrigerant: 'R-454B', held: '0 lb', added: '7 kg', recovered: '0 lb', left: '6 kg' },
      expect: '465 kg',
      tolerance: 3e-3,
      source: 'published exchange value of R-454B: 465 (handbook 3.4)',
    },
  ],
  compute: ({ refrigerant, held, added = 0, recovered, left = 0 }, { say }) => {
    const facts = factsOf(refrigerant.name);
    if (facts === undefined) return { refused: `No warming potential of ${refrigerant.name} is in the tables.` };
    const open = held + added - recovered - left;
    const missing = Math.max(0, open);
    const value = missing * facts.warming.fourth;
    return {
      value,
      notes:
        open < -1e-6
          ? [`${say('mass', -open)} more came out than was stated to be in: the charge before the work was larger.`]
          : [],
      workings: () => [
        `${say('mass', held)} + ${say('mass', added)} - ${say('mass', recovered)} - ${say('mass', left)} = ${say('mass', missing)}`,
        `${say('mass', missing)} × ${facts.warming.fourth} = ${say('mass', value)}`,
      ],
    };
  },
});
