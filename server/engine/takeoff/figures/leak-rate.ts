import { day } from '../../reference/table-units';
import { relation } from '../relation';

/** Leak rate a year by the annualising method. */
export const leakRate = relation({
  name: 'leak-rate',
  title: 'Leak rate a year',
  group: 17,
  inputs: {
    added: { kind: 'mass', title: 'refrigerant added', from: '`charged` of the record' },
    fullCharge: { kind: 'mass', title: 'full charge', from: '`charge` of the system', valid: [0.01, 1e6] },
    since: {
      kind: 'time',
      title: 'time since the last addition',
      from: '`last-addition` of the record',
      valid: [day, 1e10],
    },
  },
  output: 'share',
  formula: 'rate = added / full charge × 365 / min(days, 365)',
  validity: 'additions that make good a leak, not a retrofit or a new system',
  sources: ['annualising method of 40 CFR 82.152 and 84.102'],
  confidence: 'memory',
  assumptions: ['full charge as stated'],
  examples: [
    {
      inputs: { added: '10 lb', fullCharge: '100 lb', since: '73 days' },
      expect: '50 %',
      tolerance: 1e-6,
      source: 'by hand on the annualising formula of 40 CFR 82.152 (handbook 2.2): 10 % × 365/73',
    },
    {
      inputs: { added: '10 lb', fullCharge: '100 lb', since: '800 days' },
      expect: '10 %',
      tolerance: 1e-6,
      source: 'by hand: never less than a year counts',
    },
  ],
  compute: ({ added, fullCharge, since }, { say }) => {
    const days = Math.min(since / day, 365);
    const value = (added / fullCharge) * (365 / days);
    return {
      value,
      workings: () => [
        `${say('mass', added)} / ${say('mass', fullCharge)} × 365 / ${Math.round(days)} = ${say('share', value)} a year`,
      ],
    };
  },
});
