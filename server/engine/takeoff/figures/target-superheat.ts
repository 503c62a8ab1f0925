import {
  targetSuperheat as fromTable,
  superheatByFormula,
  superheatConfidence,
  superheatSource,
  superheatWindow,
} from '../../reference/superheat-targets';
import { relation } from '../relation';

/** Superheat to aim at with a fixed orifice or capillary tube, K. */
export const targetSuperheat = relation({
  name: 'target-superheat',
  title: 'Target superheat with a fixed orifice',
  group: 11,
  inputs: {
    outdoors: {
      kind: 'temperature',
      title: 'outdoor temperature',
      from: '`outdoors` of the site',
      valid: superheatWindow.outdoors,
    },
    wetBulb: {
      kind: 'temperature',
      title: 'wet bulb of the return air',
      from: '`indoors …, wet-bulb` of the site',
      valid: superheatWindow.wetBulb,
    },
  },
  output: 'temperature-difference',
  formula: 'from the table of outdoor dry bulb and return wet bulb, straight between its cells',
  validity: 'outdoors 55 to 115 °F, wet bulb 50 to 76 °F, target at least 5 °F',
  sources: [superheatSource],
  confidence: superheatConfidence,
  assumptions: ['air flow is right', 'the system has run steadily for 15 minutes'],
  examples: [
    {
      inputs: { outdoors: '95 degF', wetBulb: '67 degF' },
      expect: '12 Δ°F',
      tolerance: 1e-6,
      source: 'handbook section 12, WE-32',
    },
    {
      inputs: { outdoors: '90 degF', wetBulb: '66 degF' },
      expect: '13 Δ°F',
      tolerance: 1e-6,
      source: 'handbook section 12, WE-33',
    },
    {
      inputs: { outdoors: '95 degF', wetBulb: '64 degF' },
      expect: '6 Δ°F',
      tolerance: 1e-6,
      source: 'handbook section 12, WE-34',
    },
  ],
  compute: ({ outdoors, wetBulb }, { say }) => {
    const value = fromTable(outdoors, wetBulb);
    const difference = (one: number): string => say('temperature-difference', one);
    if (value === null)
      return {
        refused: `At ${say('temperature', outdoors)} outdoors and ${say('temperature', wetBulb)} wet bulb the target is below 5 °F: weigh the charge in.`,
      };
    return {
      value,
      workings: () => [
        `table at ${say('temperature', outdoors)} outdoors, ${say('temperature', wetBulb)} wet bulb: ${difference(value)}`,
        `the formula (3 wet bulb - 80 - outdoors)/2 would give ${difference(superheatByFormula(outdoors, wetBulb))}`,
      ],
    };
  },
});
