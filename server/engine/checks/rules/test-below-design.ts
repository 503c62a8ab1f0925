import type { Part } from '../../circuit/graph';
import { isLine } from '../../circuit/kinds';
import type { Space } from '../../circuit/spaces';
import type { Cause } from '../../circuit/state';
import type { Plan } from '../../plan/plan';
import { firstStage, leastDesignPressure } from '../../reference/pressure-test';
import { weakest } from '../../takeoff/ratings';
import type { Entry } from '../../walk/walk';
import { defineCheck, type WayOut, type Whole } from '../define';
import { isCasing, isCompressor, onlyDriers } from '../plant';
import { designSource, keptEquipment, saturationDesign, sideOf, statedDesign, unfit } from '../plant-facts';
import { authority, gauge } from '../support';
import { insertAfter, said, writeAt, writtenGauge } from '../ways-out';

/** A side that was never tested at the pressure that it will see. */
export const testBelowDesign = defineCheck({
  name: 'test-below-design',
  severity: 'warning',
  title: 'The pressure test is below the design pressure',
  acceptable: true,
  reads: 'figure',
  ground: 'published',
  yieldsTo: [
    'refrigerant-not-stated',
    'design-pressure-unlikely',
    'impossible-level',
    'section-not-recovered',
    'section-not-evacuated',
    'joint-left-open',
    'section-not-tested',
  ],
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
    const tests = testsOf(whole);
    for (const { index, all, lenient } of tests) {
      const best = all.reduce((most, each) => (each.level > most.level ? each : most));
      // A new unit was tested where it was made, and no joint in it is made on site (ASHRAE 15 section 9.13, from memory).
      const { unit, casing, standing } = plan.graph.parts[index]!;
      if ((unit !== null || casing !== null) && standing === 'new') continue;
      // A part that saw the first, soaped stage alone was not proved at all, which is another check's finding.
      if (isCited(best)) continue;
      if (lenient || isCasing(plan.graph, best.space)) {
        if (!isFirstStage(best)) farBelow(whole, index, best);
        continue;
      }
      // What the widest test could not ask of it, for what is weaker in the same space, a narrower one can.
      const asked = all
        .filter((each) => !isCasing(plan.graph, each.space))
        .flatMap((each) => {
          const bound = boundOf(plan, index, each.space);
          return bound === null ? [] : [{ ...each, bound }];
        })
        .reduce<(Test & { readonly bound: number }) | null>(
          (most, each) => (most && most.bound >= each.bound ? most : each),
          null,
        );
      if (!asked || best.level >= asked.bound * 0.995) continue;
      // A low-pressure machine behind its rupture disc is tested with the first stage alone (handbook 13.6).
      if (isFirstStage(best) && asked.bound <= leastDesignPressure * 1.01) continue;
      const part = plan.graph.parts[index]!;
      const kept = asked.space.parts.some((each) => isKept(plan.graph.parts[each]!));
      // Of two tests of one space the better one is meant to be the proof.
      const at = asked.space.parts.length === best.space.parts.length ? best : asked;
      whole.report(at.entry, {
        message: `${part.name} is tested at ${gauge(plan, best.level)} at the most, and ${kept ? 'even the weakest side that the gas reaches' : `its ${sideOf(plan, part)} side`} is to be proved at ${gauge(plan, asked.bound)}, the least of the design pressure and the ratings there: test it at that, or cite the sheet that asks for less; ${authority}.`,
        slot: 'level',
        root: at.entry.slot.step,
        related: [{ part: index, message: 'not proved at its design pressure' }],
        fixes: higher(whole, at, asked),
      });
    }
  },
});

/** A shell on gaskets is tested at less, but not at less than this share: there a unit or a digit slipped (common practice, no source). */
const gasketShare = 0.4;

/** A casing, or a shell that was opened again for its cores, tested at next to nothing of what it will see. */
function farBelow(whole: Whole, index: number, best: Test): void {
  const { plan } = whole;
  const { atmosphere } = plan.site;
  const bound = boundOf(plan, index, best.space);
  if (bound === null || best.level - atmosphere >= (bound - atmosphere) * gasketShare) return;
  const { step } = best.entry.slot;
  whole.report(best.entry, {
    message: `What was closed on gaskets is tested here at ${gauge(plan, best.level)} alone, where ${gauge(plan, bound)} is the least of the design pressure and the ratings there: read figure and unit again, or cite the sheet that asks for so little; ${authority}.`,
    slot: 'level',
    root: step,
    related: [{ part: index, message: 'not proved at its design pressure' }],
    fixes: writeAt(step, step.values['level'], writtenGauge(plan, bound)),
  });
}

/** The level that is asked, where nothing that the gas reaches by this step bears less. */
function higher(whole: Whole, at: Test, asked: Test & { readonly bound: number }): readonly WayOut[] {
  const { plan } = whole;
  const { step } = at.entry.slot;
  const reached = at.entry.events.flatMap((event) =>
    event.type === 'pressurises' ? event.spaces.flatMap((space) => space.parts) : [],
  );
  const limit = weakest(plan, at.entry.before, reached)?.limit ?? Number.POSITIVE_INFINITY;
  // A drier tested between its own valves leaves the rest to a test that is missing.
  if (asked.bound <= at.level || asked.bound > limit * 1.005 || onlyDriers(at.entry.before, at.space)) return [];
  const level = writtenGauge(plan, asked.bound);
  if (!isFirstStage(at)) return writeAt(step, step.values['level'], level);
  return [
    insertAfter(
      'Test at that after the first stage',
      step,
      `pressure-test ${said(step, 'what')} to ${level} for 30 min`,
    ),
  ];
}

interface Test {
  readonly entry: Entry;
  readonly level: number;
  readonly space: Space;
}

interface Proof {
  readonly index: number;
  /** Opened again on gaskets alone: it was proved at its pressure before. */
  readonly lenient?: true;
  readonly opened: Cause | null;
  readonly all: Test[];
}

/**
 * The tests of each part since it was opened, without first stages where a higher one follows anywhere. A part that is
 * opened and brazed once more has to be proved once more.
 */
function testsOf(whole: Whole): readonly Proof[] {
  const all = whole.entries.flatMap((entry) =>
    entry.events.flatMap((event) =>
      event.type === 'pressurises' && event.purpose === 'test'
        ? event.spaces.map((space): Test => ({ entry, level: event.level, space }))
        : [],
    ),
  );
  const staged = all.some((each) => !isFirstStage(each));
  const found = new Map<number, Proof[]>();
  for (const each of all) {
    if (staged && isFirstStage(each)) continue;
    for (const index of each.space.parts) {
      const { opened } = each.entry.before.parts[index]!;
      const of = found.get(index) ?? [];
      const known = of.find((proof) => proof.opened === opened);
      if (known) known.all.push(each);
      else found.set(index, [...of, { index, opened, all: [each] }]);
    }
  }
  return [...found.values()].flatMap(([first, ...again]) => [
    first!,
    ...again.map((proof): Proof => (brazedSince(whole, proof) ? proof : { ...proof, lenient: true })),
  ]);
}

/** A shell that was opened again for its cores alone, on gaskets, goes back as it was; a new brazed joint has to be proved. */
function brazedSince(whole: Whole, { opened, all }: Proof): boolean {
  const { entries } = whole;
  const from = entries.findIndex((entry) => entry.cause === opened);
  const to = entries.indexOf(all[0]!.entry);
  return entries
    .slice(from, to)
    .some(({ events }) =>
      events.some((event) => event.type === 'joins' && event.torch && all[0]!.space.parts.includes(event.part)),
    );
}

const isFirstStage = (test: Test): boolean => test.level <= firstStage.quantity.high * 1.01;
const isCited = (test: Test): boolean => typeof test.entry.slot.step.values['per'] === 'string';

/** What a test of a space can ask of one part in it, Pa absolute; null where nothing is known. */
function boundOf(plan: Plan, index: number, space: Space): number | null {
  // Where old equipment or a valve that stays hangs in the same space, gas goes no higher than its weakest part bears.
  if (space.parts.some((part) => isKept(plan.graph.parts[part]!)))
    return least(space.parts.map((part) => wanted(plan, part)));
  // A part that is rated lower bounds what its neighbours can be tested at.
  return least([wanted(plan, index), ...space.parts.flatMap((each) => plan.graph.parts[each]!.properties.rated ?? [])]);
}

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
