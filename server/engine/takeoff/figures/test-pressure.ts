import { overshootMost } from '../../reference/pressure-test';
import { relation } from '../relation';

/** The least pressure that a field test must reach, Pa absolute. */
export const testPressure = relation({
  name: 'test-pressure',
  title: 'Least test pressure',
  group: 8,
  inputs: {
    design: { kind: 'pressure', title: 'design pressure', from: '`design-pressure` of the system' },
    relief: { kind: 'pressure', title: 'setting of the relief device', from: '`relief` of the part', optional: true },
    weakest: { kind: 'pressure', title: 'lowest rating in reach', from: '`rated` of the parts', optional: true },
  },
  output: 'pressure',
  formula: 'p = the lower of design pressure and relief setting of that side',
  validity: 'field-erected parts, tested with nitrogen',
  sources: ['field test form after ASHRAE 15 section 10.1', overshootMost.source],
  confidence: 'published',
  assumptions: ['charged and factory-tested units stand isolated'],
  examples: [
    {
      inputs: { design: '450 psig' },
      expect: '450 psig',
      tolerance: 1e-9,
      source: 'handbook 7.1: not less than the design pressure',
    },
    {
      inputs: { design: '450 psig', relief: '400 psig' },
      expect: '400 psig',
      tolerance: 1e-9,
      source: 'handbook 7.1: the lower of design pressure and relief setting',
    },
  ],
  compute: ({ design, relief, weakest }, { say }) => {
    const value = Math.min(design, relief ?? design);
    const pressure = (one: number): string => say('pressure', one);
    return {
      value,
      notes:
        weakest !== undefined && weakest < value
          ? [`A part in reach is rated ${pressure(weakest)}, below the least test pressure of ${pressure(value)}.`]
          : [],
      workings: () => [
        relief === undefined
          ? `design pressure ${pressure(design)}`
          : `the lower of ${pressure(design)} and ${pressure(relief)} = ${pressure(value)}`,
      ],
    };
  },
});
