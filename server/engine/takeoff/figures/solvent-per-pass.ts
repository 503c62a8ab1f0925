import { solventLeast, solventShare } from '../../reference/flush-practice';
import { relation } from '../relation';

/** Solvent of one pass through one line, m3. */
export const solventPerPass = relation({
  name: 'solvent-per-pass',
  title: 'Solvent for one pass',
  group: 5,
  inputs: {
    lineVolume: { kind: 'volume', as: 'fl-oz', title: 'volume of the line', from: '`tube` and `length` of the line' },
    share: {
      kind: 'share',
      title: 'share of the line’s volume',
      from: '`share-of-volume` of the solvent',
      default: solventShare,
      valid: [0, 2],
    },
    leastPerPass: {
      kind: 'volume',
      as: 'fl-oz',
      title: 'least for a pass',
      from: '`least-per-pass` of the solvent',
      default: solventLeast,
    },
    traps: {
      kind: 'volume',
      as: 'fl-oz',
      title: 'volume of a trap',
      from: '`trap` of the line',
      optional: true,
      several: true,
    },
  },
  output: 'volume',
  outputUnit: 'fl-oz',
  formula: 'V = max(least per pass, share × V line) + V traps',
  validity: 'the slug method: a shot of liquid driven by gas',
  sources: ['no public standard; engineering estimate of the slug method'],
  confidence: 'practice',
  assumptions: ['liquid travels as a wetting slug', 'every trap fills once on each pass'],
  examples: [
    {
      inputs: { lineVolume: '0.747 L', share: '15 %', leastPerPass: '0.25 L' },
      expect: '0.25 L',
      tolerance: 1e-3,
      source: 'handbook section 12, WE-30: 3/8 line, 0.50 L in 2 passes',
    },
    {
      inputs: { lineVolume: '4.759 L', share: '15 %', leastPerPass: '0.25 L' },
      expect: '0.714 L',
      tolerance: 1e-3,
      source: 'handbook section 12, WE-30: 7/8 line, 1.43 L in 2 passes',
    },
  ],
  compute: ({ lineVolume, share, leastPerPass, traps }, { say }) => {
    const held = traps.reduce((sum, one) => sum + one, 0);
    const slug = Math.max(leastPerPass, share * lineVolume);
    const volume = (value: number): string => say('volume', value, 'fl-oz');
    return {
      value: slug + held,
      workings: () => [
        `share of the line = ${say('share', share)} × ${volume(lineVolume)} = ${volume(share * lineVolume)}`,
        `slug = the larger of ${volume(leastPerPass)} and ${volume(share * lineVolume)} = ${volume(slug)}`,
        ...(held > 0 ? [`with traps = ${volume(slug)} + ${volume(held)} = ${volume(slug + held)}`] : []),
      ],
    };
  },
});
