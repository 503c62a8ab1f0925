import { spacesOf } from '../../circuit/spaces';
import { factsOf, isFlammable } from '../../reference/refrigerant-facts';
import { defineCheck } from '../define';
import { isOrAre } from '../is-are';
import { heldBy } from '../plant';
import { moveDown } from '../ways-out';
import { besides } from './decay-test-missing';

/** The charge of a new unit let into lines that are not ready for it. */
export const valvesOpenedEarly = defineCheck({
  name: 'valves-opened-early',
  severity: 'error',
  title: "A new unit's valves are opened before its lines are ready",
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['joint-left-open'],
  meaning:
    'The service valves of a new unit are opened while the lines are open, or hold air or nitrogen: before their test, evacuation and decay test. Air with a refrigerant that does not burn is a warning.',
  why: 'The factory charge is lost into the room, pushed back by test nitrogen, or mixed with air and water; a flammable one burns.',
  source: 'common practice (handbook 13.2)',
  wrong: {
    base: 'split',
    instead: [
      ['    check ignition-sources within 10 ft\n    open service-valves\n', ''],
      [
        'release nitrogen outdoors',
        'check ignition-sources within 10 ft\n    open service-valves # <- here\n    release nitrogen outdoors',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    for (const event of here.events('lets-in')) {
      for (const space of besides(here.before, event.ends)) {
        const held = heldBy(here.before, spacesOf(here.before, space.parts[0]!)[0] ?? space);
        const open = space.openings.length > 0;
        if (!open && held.gas !== 'nitrogen' && held.gas !== 'air') continue;
        if (space.parts.some((part) => event.parts.includes(part))) continue;
        const gas = here.plan.system.refrigerant.after;
        const facts = gas === null ? undefined : factsOf(gas);
        const burns = facts?.safetyClass ? isFlammable(facts.safetyClass) : false;
        here.report({
          message: (say) =>
            `The unit's charge goes into ${say.parts(space.parts)}, which ${open ? `${isOrAre(space.parts.length)} open to the air` : `still ${space.parts.length > 1 ? 'hold' : 'holds'} ${held.gas} since ${say.step(held.since)}`}: test, evacuate and decay-test the lines first.`,
          slot: 'what',
          severity: open || burns || held.gas === 'nitrogen' ? 'error' : 'warning',
          root: here.step,
          concerns: [...space.parts, ...event.parts],
          fixes: [
            moveDown('Open them when the lines are proved', here.entry, 'after', (later) =>
              besides(later.after, event.ends).every(
                (each) =>
                  each.openings.length === 0 &&
                  heldBy(later.after, each).gas === 'vacuum' &&
                  each.parts.every((part) => later.after.parts[part]!.decayTested !== null),
              ),
            ),
          ],
          related: held.since ? [{ cause: held.since, message: `the ${held.gas} came in here` }] : [],
        });
      }
    }
  },
});
