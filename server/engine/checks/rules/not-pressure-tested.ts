import type { Cause, Plant, Proof } from '../../circuit/state';
import type { Plan } from '../../plan/plan';
import { firstStage } from '../../reference/pressure-test';
import { standardAtmosphere } from '../../reference/table-units';
import type { Entry } from '../../walk/walk';
import { defineCheck, type Whole } from '../define';
import { isVehicle } from '../equipment';
import { isCasing, onlyDriers } from '../plant';
import { saturationDesign, sideOf, statedDesign } from '../plant-facts';
import { edits, gauge, inOwn } from '../support';
import { moveBefore, writtenGauge } from '../ways-out';

/** What was opened is pumped on or charged without a pressure test since. */
export const notPressureTested = defineCheck({
  name: 'not-pressure-tested',
  severity: 'warning',
  title: 'Evacuated or charged with no pressure test since it was opened',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  yieldsTo: ['joint-left-open', 'pressure-above-rating', 'torch-hazard', 'test-below-design'],
  meaning:
    'A part that was opened is evacuated, or refrigerant is let into it, and no pressure test has covered it since: none was made, it was made before anything was opened, it did not reach this section, it stopped at the first, soaped stage, or a later step opened the part again. In a vehicle a decay test serves as well.',
  why: 'A pump on a leak draws in air and water for hours and the decay test then only says that something leaks; the charge goes the same way.',
  source:
    'ASHRAE 15 field test, federal guide specification 15652A (handbook 7.1, 13.1); vehicles: manual of a public service, a vacuum that holds (handbook 8.1, S:72)',
  wrong: {
    base: 'split',
    instead: [
      ['pressure-test each open part to 450 psig for 30 min\n', ''],
      ['release nitrogen outdoors\n', ''],
      ['evacuate each open part to 500 micron', 'evacuate each open part to 500 micron # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const told = new Set<Cause | null>();
    const higherOf = higherTests(whole.entries);
    const onWheels = isVehicle(whole.plan);
    for (const entry of whole.entries) {
      const aimed = entry.events.flatMap((event) =>
        (event.type === 'evacuates' && !onWheels) || (event.type === 'charges' && event.purpose === 'charge')
          ? event.spaces.filter((space) => space.openings.length === 0 && !onlyDriers(entry.before, space))
          : [],
      );
      for (const space of aimed) {
        const bare = space.parts.filter((part) => {
          const state = entry.before.parts[part]!;
          // The manuals of vehicles prove with the vacuum that holds.
          if (onWheels && state.decayTested !== null) return false;
          return state.opened !== null && !state.ownCharge && !proved(whole, entry.before, part, higherOf);
        });
        const [first] = bare;
        if (first === undefined) continue;
        // Swept with the pump before it is opened, by a clamp on a tube that was never cut: nothing is there to test yet.
        const sweep = bare.every((part) => entry.before.graph.parts[part]!.kind.kind === 'piercing-valve');
        if (sweep && entry.events.every((event) => event.type !== 'charges')) continue;
        const cause = entry.before.parts[first]!.opened;
        if (told.has(cause)) continue;
        told.add(cause);
        const { tested } = entry.before.parts[first]!;
        const higher = tested && higherOf.get(tested);
        const before = whole.entries.find((each) =>
          each.events.some(
            (event) =>
              event.type === 'pressurises' &&
              event.purpose === 'test' &&
              event.spaces.some((one) => one.parts.includes(first)),
          ),
        );
        whole.report(entry, {
          message: (say) =>
            before && whole.entries.indexOf(before) < whole.entries.indexOf(entry)
              ? tested !== null
                ? `${say.parts(bare)} ${bare.length > 1 ? 'were' : 'was'} tested at no more than a first stage, ${gauge(whole.plan, tested.level)}, since ${bare.length > 1 ? 'they were' : 'it was'} opened: test at the design pressure before the pump is put on.`
                : `${say.parts(bare)} ${bare.length > 1 ? 'were' : 'was'} opened again after the test of ${say.step(before.cause)}: test again before the pump is put on.`
              : `${say.parts(bare)} ${bare.length > 1 ? 'were' : 'was'} opened at ${say.step(cause)} and never pressure-tested before this step.`,
          slot: 'what',
          root: cause,
          concerns: bare,
          related: [
            { cause, message: 'it was opened here' },
            ...(tested ? [{ cause: tested.by, message: 'the first stage' }] : []),
            ...(higher ? [{ cause: higher.cause, message: 'the higher test comes only here' }] : []),
          ],
          // Nitrogen is no way out where refrigerant stands already in what was opened, nor where the vacuum is the proof.
          fixes:
            onWheels ||
            entry.before.parts.some(
              ({ opened, contents }) => opened !== null && contents.some(({ gas }) => gas === 'refrigerant'),
            )
              ? []
              : higher
                ? [moveBefore('Move the higher test before this step', higher.slot.step, entry.slot.step)]
                : [
                    {
                      title: 'Test before this step',
                      edits: (mend) =>
                        edits(
                          mend.insertBefore(
                            entry.slot.step,
                            `pressure-test each open part to ${levelFor(whole.plan)} for 30 min`,
                            'release nitrogen outdoors',
                          ),
                        ),
                    },
                  ],
        });
      }
    }
  },
});

/**
 * Whether a pressure test has covered a part since it was opened. The first stage finds open joints; it proves a part
 * only where its side is designed for little more, where the step cites the sheet that asks for no more, or where it is
 * the casing of a compressor alone.
 */
function proved(whole: Whole, plant: Plant, part: number, higherOf: ReadonlyMap<Proof, Entry>): boolean {
  const { tested } = plant.parts[part]!;
  if (tested === null) return false;
  const { plan } = whole;
  const stage = firstStage.quantity.high - standardAtmosphere;
  // Whoever raises the pressure in two tests proves with the second.
  if (higherOf.has(tested)) return false;
  if (tested.level - plan.site.atmosphere > stage * 1.01) return true;
  const test = whole.entries.find((entry) => entry.cause === tested.by);
  if (typeof test?.slot.step.values['per'] === 'string') return true;
  const space = test?.events
    .flatMap((event) => (event.type === 'pressurises' ? event.spaces : []))
    .find((each) => each.parts.includes(part));
  if (space && isCasing(plan.graph, space)) return true;
  const side = sideOf(plan, plan.graph.parts[part]!);
  const design = statedDesign(plan, side) ?? saturationDesign(plan, side);
  return design === null || design - plan.site.atmosphere < stage * 3;
}

/** Of each proof of a part the higher test that the plan goes on to, with nobody opening the part in between. */
function higherTests(entries: readonly Entry[]): ReadonlyMap<Proof, Entry> {
  const found = new Map<Proof, Entry>();
  for (const entry of entries)
    for (const event of entry.events) {
      if (event.type !== 'pressurises' || event.purpose !== 'test') continue;
      for (const part of event.spaces.flatMap((space) => space.parts)) {
        const { tested } = entry.before.parts[part]!;
        if (tested && !found.has(tested) && event.level > tested.level * 1.005) found.set(tested, entry);
      }
    }
  return found;
}

/** The level that a test is to have: as the plan states it, else the design pressure of its weaker side. */
const levelFor = (plan: Plan): string => {
  if (plan.parameters.testPressure) return 'test-pressure';
  const low = plan.system.designLow;
  return low ? writtenGauge(plan, low.quantity.low) : inOwn(plan, '150 psig', '1000 kPa gauge');
};
