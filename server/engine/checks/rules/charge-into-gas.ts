import { spacesOf } from '../../circuit/spaces';
import type { Contents } from '../../circuit/state';
import { factsOf, isFlammable } from '../../reference/refrigerant-facts';
import { defineCheck } from '../define';
import { heldBy, sectionsLetIn, touchedSpaces } from '../plant';
import { edits, inOwn } from '../support';

/** Refrigerant weighed into nitrogen or air. */
export const chargeIntoGas = defineCheck({
  name: 'charge-into-gas',
  severity: 'warning',
  title: 'Charged into nitrogen or air instead of a vacuum',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: [
    'refrigerant-not-stated',
    'joint-left-open',
    'valves-opened-early',
    'section-not-evacuated',
    'charge-still-in',
  ],
  meaning:
    'When the charge goes in, the part holds nitrogen or air: it was never evacuated, or gas was let in after the last evacuation. With a flammable refrigerant, or after an evacuation, the finding is an error.',
  why: 'Gas that does not condense raises the pressure for good; air with a flammable refrigerant burns, and its water makes acid.',
  source: 'common practice (handbook 13.1, 8.2); flammable gas and air: handbook 11',
  wrong: {
    base: 'rack',
    instead: [
      ['evacuate system to 500 micron\n', ''],
      ['decay-test system for 30 min, rise at most 200 micron\n', ''],
      ['charge system with R-448A 50 lb as liquid', 'charge system with R-448A 50 lb as liquid # <- here'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    whole.entries.forEach((entry, at) => {
      if (entry.before === entry.after) return;
      const charges = entry.events.flatMap((event) =>
        event.type === 'charges' && event.purpose === 'charge'
          ? [{ refrigerant: event.refrigerant, spaces: event.spaces }]
          : [],
      );
      // A section that a valve opens to the charge is charged, too.
      const joined = charges.length > 0 ? [] : sectionsLetIn(entry.before, entry.after);
      const gas = whole.plan.system.refrigerant.after;
      const all = joined.length > 0 && gas !== null ? [...charges, { refrigerant: gas, spaces: joined }] : charges;
      for (const event of all) {
        for (const space of event.spaces) {
          if (space.openings.length > 0) continue;
          const held: Contents = heldBy(entry.before, spacesOf(entry.before, space.parts[0]!)[0] ?? space);
          if (held.gas !== 'nitrogen' && held.gas !== 'air') continue;
          const after = whole.entries
            .slice(0, at)
            .some((each) =>
              each.events.some(
                (one) =>
                  one.type === 'evacuates' && one.spaces.some((reached) => reached.parts.includes(space.parts[0]!)),
              ),
            );
          // Where valves part what was opened, one pump does not reach all of it, and which section lacks it is for the author.
          const apart = touchedSpaces(entry.before).some(
            (other) =>
              !other.parts.includes(space.parts[0]!) &&
              other.parts.some((part) => entry.before.parts[part]!.opened !== null),
          );
          const facts = factsOf(event.refrigerant);
          const burns = facts?.safetyClass ? isFlammable(facts.safetyClass) : false;
          whole.report(entry, {
            message: (say) =>
              `${event.refrigerant} goes into ${say.parts(space.parts)}, which ${space.parts.length > 1 ? 'hold' : 'holds'} ${held.gas} since ${say.step(held.since)}${after ? ', after the last evacuation' : ''}: evacuate and prove the vacuum first${burns ? '; it burns with air' : ''}.`,
            slot: 'what',
            severity: after || (burns && held.gas === 'air') ? 'error' : 'warning',
            root: held.since,
            concerns: space.parts,
            related: [{ cause: held.since, message: `the ${held.gas} came in here` }],
            // Air that a step let in under pressure is that step's fault.
            fixes:
              apart || (held.gas === 'air' && held.high > whole.plan.site.atmosphere * 1.3)
                ? []
                : [
                    {
                      title: 'Evacuate and decay-test before this step',
                      edits: (mend) =>
                        edits(
                          mend.insertBefore(
                            entry.slot.step,
                            ...(held.high > whole.plan.site.atmosphere * 1.3 ? ['release nitrogen outdoors'] : []),
                            `evacuate each open part to ${inOwn(whole.plan, '500 micron', '65 Pa absolute')}`,
                            `decay-test each open part for 30 min, rise at most ${inOwn(whole.plan, '200 micron', '25 Pa')}`,
                          ),
                        ),
                    },
                  ],
          });
        }
      }
    });
  },
});
