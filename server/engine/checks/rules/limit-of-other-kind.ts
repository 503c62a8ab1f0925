import type { Selector } from '../../plan/selection';
import type { Amount } from '../../plan/term';
import type { Kind } from '../../quantity';
import { defineCheck } from '../define';
import { inOwn } from '../support';

/** What a reading is, by the word for it; words that are not here may be anything. */
const kinds: readonly (readonly [word: RegExp, kind: Kind, like: readonly [inchPound: string, si: string]])[] = [
  [/^(pressures?|gauge)$/, 'pressure', ['68 psig', '470 kPa gauge']],
  [/^pressure-drop$/, 'pressure-difference', ['3 psi', '20 kPa']],
  [/^(superheat|subcooling|temperature-split)$/, 'temperature-difference', ['10 Δ°F', '6 Δ°C']],
  [/(^|-)temperatures?$/, 'temperature', ['75 °F', '24 °C']],
];

/** A limit that is not of the kind of what is read: psi where a gauge is read, degrees of a thermometer for superheat. */
export const limitOfOtherKind = defineCheck({
  name: 'limit-of-other-kind',
  severity: 'error',
  title: 'The limit of a reading is of another kind than the reading',
  acceptable: false,
  noFix: 'Whether the gauge or the absolute pressure is meant, or a difference, only its author knows.',
  reads: 'figure',
  ground: 'practice',
  meaning:
    'A gauge is read against a limit in `psi`, which does not say what it counts from; a drop of pressure against one in `psig`; superheat against the reading of a thermometer.',
  why: 'Nobody can hold the two against each other: 4 psi may be read as a tight circuit or as one that lost its charge.',
  source: 'common practice: gauge, absolute and difference are three readings (handbook 7.1, 8.1)',
  wrong: {
    base: 'split',
    instead: [['adjust charge', 'read pressures, at least 60 psi # <- here\n  adjust charge']],
  },
  right: {
    base: 'split',
    instead: [['adjust charge', 'read pressures, at least 60 psig\n  adjust charge']],
  },
  words({ plan, step, report }) {
    if (step.word.word !== 'read') return;
    for (const slot of ['most', 'least'] as const) {
      const limit = step.values[slot] as Amount | undefined;
      if (!limit) continue;
      for (const { noun } of (step.values['what'] as readonly Selector[] | undefined) ?? []) {
        const found = kinds.find(([word]) => word.test(noun));
        if (!found || found[1] === limit.kind) continue;
        report({
          message: `${noun} is no reading in ${limit.literal.unit.name}, and "${limit.literal.text}" cannot be held against it: write it as ${inOwn(plan, ...found[2])} is written.`,
          slot,
        });
        return;
      }
    }
  },
});
