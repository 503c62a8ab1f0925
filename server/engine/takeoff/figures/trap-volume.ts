import { trapFactor } from '../../reference/flush-practice';
import { relation } from '../relation';

/** What a low spot holds back below its overflow, m3. */
export const trapVolume = relation({
  name: 'trap-volume',
  title: 'Volume that a trap holds back',
  group: 5,
  inputs: {
    bore: { kind: 'length', as: 'in', title: 'bore', from: '`tube` of the line', valid: [0.5e-3, 0.3] },
    lengthBelow: {
      kind: 'length',
      title: 'length of tube below the overflow',
      from: '`depth` of the trap',
      valid: [0, 10],
    },
    factor: {
      kind: 'share',
      title: 'factor for the bend',
      from: 'nothing in the plan',
      default: trapFactor,
      valid: [1, 2],
    },
  },
  output: 'volume',
  formula: 'V = π/4 × bore² × factor × length of tube below the overflow',
  validity: 'U and P traps, sagging runs',
  sources: [trapFactor.source],
  confidence: 'practice',
  assumptions: ['the trap is full of liquid to its overflow'],
  examples: [
    {
      inputs: { bore: '0.785 in', lengthBelow: '0.15 m' },
      expect: '0.0515 L',
      tolerance: 0.01,
      source: 'handbook 5.2: a 7/8 trap holds 0.05 to 0.11 L',
    },
    {
      inputs: { bore: '0.785 in', lengthBelow: '0.35 m' },
      expect: '0.12 L',
      tolerance: 0.02,
      source: 'handbook 5.2 prints 0.11 L; 1.1 × 0.312 L/m × 0.35 m = 0.120 L by hand',
    },
  ],
  compute: ({ bore, lengthBelow, factor }, { say }) => {
    const area = (Math.PI / 4) * bore ** 2;
    const value = area * factor * lengthBelow;
    return {
      value,
      workings: () => [
        `held back = ${say('area', area, 'in2')} × ${factor} × ${say('length', lengthBelow)} = ${say('volume', value)}`,
      ],
    };
  },
});
