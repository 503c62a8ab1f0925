import { describe, expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

const names = (plan: string, ...swaps: readonly Swap[]): readonly string[] =>
  foundIn(`${plan}.jobplan`, swaps).map(({ name }) => name);

// A stub is pinched off and sealed when the machine has run (common practice, no source).
describe('the process tube of a sealed machine', () => {
  it('is pinched off', () => {
    expect(names('isobutane-cabinet', ['    pinch-off process-tube\n', ''])).toContain('process-tube-unsealed');
  });
  it('is not pinched off before the charge is in', () => {
    const found = names(
      'isobutane-cabinet',
      ['    pinch-off process-tube\n', ''],
      ['    charge system', '    pinch-off process-tube\n    charge system'],
    );
    expect(found).toContain('process-tube-unsealed');
  });
});

// Water that stands still freezes beside refrigerant that boils off (handbook 13.6).
describe('the water of an exchanger', () => {
  it('is shut before the exchanger is taken off', () => {
    expect(names('plate-exchanger-renewed', ['    check water-valves\n', ''])).toEqual(['water-side-full']);
  });
  const shut: Swap = ['    check water-valves\n    lock-out power\n', '    lock-out power\n    close water-valves\n'];
  const opened: Swap = ['    restore power', '    open water-valves\n    restore power'];
  it('is not shut in while refrigerant is drawn out of it', () => {
    expect(names('plate-exchanger-renewed', shut, opened)).toEqual(['water-side-full']);
  });
  it('is drained where it is shut in first', () => {
    const drained: Swap = [shut[0], `${shut[1]}    drain plates at water-side\n`];
    expect(names('plate-exchanger-renewed', drained, opened)).toEqual([]);
  });
});

// Solvent is waste that is caught in the open (handbook 5.3); nitrogen has no business in a recovery cylinder.
it('solvent is not blown into a recovery cylinder', () => {
  const found = foundIn('rack-conversion.jobplan', [['into container', 'into old-gas']]).map(({ name }) => name);
  expect(found).toContain('flush-no-container');
});

// PAG and POE do not run together in one machine (common practice, no source).
it('an oil of another family than the machine is to run on is not filled in', () => {
  expect(names('rack-conversion', ['to POE 140 fl-oz', 'to PAG 140 fl-oz'])).toContain('oil-does-not-suit');
});
