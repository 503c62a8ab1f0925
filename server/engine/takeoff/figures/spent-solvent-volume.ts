import { solventLost } from '../../reference/flush-practice';
import { relation } from '../relation';

/** What went into the lines and what of it comes out again, for the room and for the weight of the catch container. */
export const spentSolventInputs = {
  solvent: { kind: 'volume', as: 'fl-oz', title: 'solvent put in', from: '`tube` and `length` of the lines' },
  oil: {
    kind: 'volume',
    as: 'fl-oz',
    title: 'old oil washed out',
    from: '`tube` and `length` of the lines',
    optional: true,
  },
  lost: {
    kind: 'share',
    title: 'share of the solvent that evaporates',
    from: '`per` the solvent’s sheet',
    default: solventLost,
    valid: [0, 1],
  },
} as const;

/** What the catch container must hold, m3. */
export const spentSolventVolume = relation({
  name: 'spent-solvent-volume',
  title: 'Spent solvent and oil to catch',
  group: 5,
  inputs: spentSolventInputs,
  output: 'volume',
  outputUnit: 'fl-oz',
  formula: 'V = V solvent × (1 - share lost) + V oil',
  validity: 'all outlets led into containers',
  sources: [solventLost.source],
  confidence: 'practice',
  assumptions: ['solvent and oil add by volume', 'the container is sized for the case that nothing evaporates'],
  examples: [
    {
      inputs: { solvent: '1.93 L', oil: '0.133 L', lost: '0 %' },
      expect: '2.063 L',
      tolerance: 1e-3,
      source: 'by hand on handbook WE-30 with the films of 4.3 (95 + 38 mL)',
    },
  ],
  compute: ({ solvent, oil = 0, lost }, { say }) => {
    const value = solvent * (1 - lost) + oil;
    const volume = (one: number): string => say('volume', one, 'fl-oz');
    return {
      value,
      workings: () => [`caught = ${volume(solvent)} × (1 - ${say('share', lost)}) + ${volume(oil)} = ${volume(value)}`],
    };
  },
});
