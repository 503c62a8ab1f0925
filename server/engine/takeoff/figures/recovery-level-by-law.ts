import { laws, recoveryByLaw } from '../../reference/jurisdictions';
import { relation } from '../relation';

/** The level that recovery must reach where the law of the site asks one figure of all machines, Pa absolute. */
export const recoveryLevelByLaw = relation({
  name: 'recovery-level-by-law',
  title: 'Recovery level before opening, outside the US',
  group: 4,
  inputs: { law: { kind: 'word', title: 'law of the site', from: '`law` of the site' } },
  output: 'pressure',
  formula: 'the figure of the law, the same for every refrigerant and charge',
  validity: 'sites whose law is not that of the US',
  sources: [recoveryByLaw.EU.source, recoveryByLaw.elsewhere.source],
  confidence: 'memory',
  assumptions: ['the milder of two figures where the rule goes by an inside volume that no plan states'],
  examples: [
    {
      inputs: { law: 'EU' },
      expect: '60 kPa absolute',
      tolerance: 1e-6,
      source: 'EN 378-4: 0.6 bar absolute, from memory',
    },
    {
      inputs: { law: 'elsewhere' },
      expect: '0 psig',
      tolerance: 1e-6,
      source: 'at most atmospheric pressure: common practice, no source',
    },
  ],
  compute: ({ law }, { say, atmosphere }) => {
    const known = laws.find((each) => each === law);
    const rule = known && recoveryByLaw[known];
    if (!rule || rule.level === 'table') return { refused: `\`${law}\` asks no single figure; its table does.` };
    const value = rule.level === 'atmosphere' ? atmosphere : Math.min(atmosphere, rule.level);
    return { value, workings: () => [`${rule.source}: ${say('pressure', value)}`] };
  },
});
