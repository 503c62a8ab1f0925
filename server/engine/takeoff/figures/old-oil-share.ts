import { relation } from '../relation';

/** Share of old oil in the oil that circulates after the work. */
export const oldOilShare = relation({
  name: 'old-oil-share',
  title: 'Old oil as a share of all',
  group: 12,
  inputs: {
    residues: {
      kind: 'volume',
      as: 'fl-oz',
      title: 'old oil left',
      from: '`tube` and `length` of the kept lines',
      several: true,
    },
    fresh: { kind: 'volume', as: 'fl-oz', title: 'new oil', from: '`oil` of the compressor' },
  },
  output: 'share',
  formula: 'f = old / (old + new)',
  validity: 'oils of about the same density',
  sources: ['dilution arithmetic'],
  confidence: 'computed',
  assumptions: ['full mixing'],
  examples: [
    {
      inputs: { residues: ['47 mL'], fresh: '893 mL' },
      expect: '5 %',
      tolerance: 1e-3,
      source: 'by hand: 47 of 940 mL',
    },
  ],
  compute: ({ residues, fresh }, { say }) => {
    const old = residues.reduce((sum, one) => sum + one, 0);
    if (old + fresh <= 0) return { refused: 'There is no oil at all.' };
    const value = old / (old + fresh);
    return {
      value,
      workings: () => [
        `${residues.map((one) => say('volume', one, 'fl-oz')).join(' + ')} = ${say('volume', old, 'fl-oz')}`,
        `${say('volume', old, 'fl-oz')} / (${say('volume', old, 'fl-oz')} + ${say('volume', fresh, 'fl-oz')}) = ${say('share', value)}`,
      ],
    };
  },
});
