import type { Part } from '../../circuit/graph';
import { isLine } from '../../circuit/kinds';
import type { Space } from '../../circuit/spaces';
import type { Plan } from '../../plan/plan';
import { firstStage } from '../../reference/pressure-test';
import type { Entry } from '../../walk/walk';
import { defineCheck } from '../define';
import { isCompressor } from '../plant';
import { designSource, keptEquipment, saturationDesign, sideOf, statedDesign, unfit } from '../plant-facts';
import { gauge } from '../support';

/** A side that was never tested at the pressure that it will see. */
export const testBelowDesign = defineCheck({
  name: 'test-below-design',
  severity: 'warning',
  title: 'The pressure test is below the design pressure',
  acceptable: true,
  reads: 'figure',
  ground: 'published',
  meaning:
    'The highest test that a part gets is below the design pressure of its side, as the plate states it, or, where the old equipment stays, below what the new refrigerant reaches at design temperature. A part rated lower is tested at its rating.',
  why: 'A joint that holds at a lower pressure has not shown that it holds on a hot day.',
  source: `ASHRAE 15 section 9.13 (test at the design pressure or above); ${designSource}`,
  wrong: {
    base: 'split',
    instead: [
      ['pressure-test each open part to 450 psig', 'pressure-test each open part to 300 psig # <- here'],
      ['test-pressure 450 psig', 'test-pressure 300 psig'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    if (unfit(plan) !== null) return;
    const best = new Map<number, { readonly entry: Entry; readonly level: number; readonly space: Space }>();
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        if (event.type !== 'pressurises' || event.purpose !== 'test') continue;
        for (const space of event.spaces)
          for (const part of space.parts)
            if (event.level > (best.get(part)?.level ?? 0)) best.set(part, { entry, level: event.level, space });
      }
    }
    for (const [index, { entry, level, space }] of best) {
      // A part that saw the first, soaped stage alone was not proved at all, which is another check's finding.
      if (
        typeof entry.slot.step.values['per'] === 'string' ||
        level <= firstStage.quantity.high * 1.01 ||
        isCasing(plan, space)
      )
        continue;
      // A part that is rated lower bounds what its neighbours can be tested at.
      const rated = space.parts.flatMap((each) => plan.graph.parts[each]!.properties.rated ?? []);
      const own = least([wanted(plan, index), ...rated]);
      // Where old equipment or a valve that stays hangs in the same space, gas goes no higher than its weakest part bears.
      const kept = space.parts.some((part) => isKept(plan.graph.parts[part]!));
      const limit = kept ? least(space.parts.map((part) => wanted(plan, part))) : own;
      if (limit === null || level >= limit * 0.995) continue;
      const part = plan.graph.parts[index]!;
      whole.report(entry, {
        message: `${part.name} is tested at ${gauge(plan, level)} at the most, and ${kept ? 'even the weakest side that the gas reaches' : `its ${sideOf(plan, part)} side`} is designed for ${gauge(plan, limit)}: test it at that, or cite the sheet that asks for less.`,
        slot: 'level',
        root: entry.slot.step,
        related: [{ part: index, message: 'not proved at its design pressure' }],
      });
    }
  },
});

/** A compressor alone between its own shut valves: its maker tested the shell, the crew soaps the joints. */
const isCasing = (plan: Plan, space: Space): boolean =>
  space.parts.every(
    (index) => isCompressor(plan.graph.parts[index]!) || plan.graph.parts[index]!.kind.group === 'valve',
  );

const isKept = (part: Part): boolean => part.standing === 'kept' && !isLine(part.kind);

const least = (all: readonly (number | null)[]): number | null => {
  const known = all.flatMap((each) => each ?? []);
  return known.length > 0 ? Math.min(...known) : null;
};

/** What a part is to be proved at: the design pressure of its side; where equipment stays, what the refrigerant reaches; never over its rating. */
function wanted(plan: Plan, index: number): number | null {
  const part = plan.graph.parts[index]!;
  // The shell of most compressors is of the low side.
  const side = isCompressor(part) && part.standing === 'kept' ? 'low' : sideOf(plan, part);
  const asked = statedDesign(plan, side);
  const reaches = saturationDesign(plan, side);
  const old = keptEquipment(plan).length > 0;
  const level = asked === null ? reaches : old && reaches !== null ? Math.min(asked, reaches) : asked;
  return level === null ? null : Math.min(level, part.properties.rated ?? Number.POSITIVE_INFINITY);
}
