import type { Part } from '../../circuit/graph';
import type { Selector } from '../../plan/selection';
import type { Amount } from '../../plan/term';
import { exactly, isProblem, toQuantity } from '../../quantity';
import { acidPolyolester } from '../../reference/oil-limits';
import { suctionDrierDrop, suctionDrierSource } from '../../reference/suction-drier-drop';
import { fahrenheit } from '../../reference/table-units';
import { defineCheck, type Here } from '../define';
import { isDrier } from '../plant';
import { shown } from '../support';
import { writeAt, written } from '../ways-out';

/** Tables of the drop differ by publisher; beyond half as much again a figure slipped. Common practice, no source. */
const overTable = 1.5;
/** The warmest row of the table, which lets the most through, stands for a machine whose evaporating temperature nobody states. */
const warmest = fahrenheit(40);

/** A limit that acid oil or a choked drier passes. */
export const limitFarTooLoose = defineCheck({
  name: 'limit-far-too-loose',
  severity: 'warning',
  title: 'The limit of a test for acid or a choked drier lets anything pass',
  acceptable: true,
  reads: 'figure',
  ground: 'memory',
  meaning:
    'An acid test allows more than any oil has in use, or the pressure drop over a drier may be far above the usual table for its evaporating temperature, and no sheet is cited.',
  why: 'The test passes whatever stands in the machine: acid eats the next winding, and a choked drier starves the compressor.',
  source: `${acidPolyolester.source}; ${suctionDrierSource} (handbook 4.5)`,
  wrong: {
    base: 'split',
    instead: [['    restore power', '    acid-test compressor, at most 0.5 mgKOH/g # <- here\n    restore power']],
  },
  right: {
    base: 'split',
    instead: [['    restore power', '    acid-test compressor, at most 0.05 mgKOH/g\n    restore power']],
  },
  step(here) {
    if (here.per !== null) return;
    if (here.step.word.word === 'acid-test') {
      for (const slot of ['most', 'severe'] as const) acid(here, slot);
      return;
    }
    const what = here.step.values['what'] as readonly Selector[] | undefined;
    if (here.events('reads').length === 0 || !what?.some((each) => each.noun === 'pressure-drop')) return;
    const named = what.flatMap((each) => each.of.map((one) => one.noun));
    drop(
      here,
      here.plan.graph.parts.filter((part) => isDrier(part) && named.includes(part.name)),
    );
  },
});

function limitOf(here: Here, slot: string): ReturnType<typeof toQuantity> | null {
  const value = here.step.values[slot] as Amount | undefined;
  return value && 'literal' in value ? toQuantity(value.literal, value.kind, here.plan.site.atmosphere) : null;
}

function acid(here: Here, slot: 'most' | 'severe'): void {
  const limit = limitOf(here, slot);
  const most = acidPolyolester.quantity.high;
  if (!limit || isProblem(limit) || limit.low <= most * 1.01) return;
  here.report({
    message: `${shown(here.plan, limit)} is acid oil by any rule: the limit in use is ${shown(here.plan, exactly('acid-number', most))} at most, for fresh POE (${acidPolyolester.source}); state a lower one, or cite the sheet.`,
    slot,
    root: slot,
    fixes: writeAt(here.step, here.step.values[slot], written(here.plan, exactly('acid-number', most))),
  });
}

/** Over a drier of the high side no table lets more through than over one in the warmest suction line. */
function drop(here: Here, driers: readonly Part[]): void {
  const limit = limitOf(here, 'most');
  if (!limit || isProblem(limit) || limit.kind !== 'pressure-difference') return;
  const { refrigerant, evaporating } = here.plan.system;
  for (const part of driers) {
    const at = part.highSide ? warmest : (evaporating?.quantity.low ?? warmest);
    const most = suctionDrierDrop(refrigerant.after ?? '', at, 'temporary');
    if (limit.low <= most * overTable) continue;
    here.report({
      message: `${shown(here.plan, limit)} over ${part.name} is a choked drier: the usual table allows ${shown(here.plan, exactly('pressure-difference', most))} (${suctionDrierSource}); state a lower limit, or cite the sheet.`,
      slot: 'most',
      root: part.index,
      concerns: [part.index],
      fixes: writeAt(here.step, here.step.values['most'], written(here.plan, exactly('pressure-difference', most))),
    });
    return;
  }
}
