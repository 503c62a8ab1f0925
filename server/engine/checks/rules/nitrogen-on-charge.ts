import { defineCheck } from '../define';
import { aboveZero, heldBy, touchedSpaces } from '../plant';
import { gauge } from '../support';

/** Nitrogen to "break the vacuum" of what holds its charge. */
export const nitrogenOnCharge = defineCheck({
  name: 'nitrogen-on-charge',
  severity: 'warning',
  title: 'Nitrogen is to break a vacuum where refrigerant stands',
  acceptable: true,
  noFix: 'Whether the step stands in the wrong place or one too many, only its author knows.',
  reads: 'state',
  ground: 'practice',
  meaning:
    'Nothing stands under vacuum when the step comes: everything that the job works on holds refrigerant above the atmosphere, before it is recovered or after it is charged.',
  why: 'Refrigerant flows back into the hose and the regulator, or nitrogen gets into the charge: the head stands high, no subcooling is right any more, and all of it must come out again.',
  source: 'common practice (handbook 8.2: between two pulls; 13.1)',
  wrong: {
    base: 'split',
    instead: [['start system', 'break-vacuum with nitrogen to 2 psig # <- here\n    start system']],
  },
  right: {
    base: 'split',
    instead: [
      [
        'evacuate each open part to 500 micron',
        'evacuate each open part to 1500 micron\n    break-vacuum with nitrogen to 2 psig\n    evacuate each open part to 500 micron',
      ],
    ],
  },
  step(here) {
    const idle = here.events('pressurises').find((event) => event.purpose === 'break' && event.spaces.length === 0);
    if (!idle) return;
    const plant = here.before;
    const all = idle.meant ?? touchedSpaces(plant);
    // What stands open has no vacuum for want of a joint, not for want of a pump.
    if (all.some((space) => space.openings.length > 0)) return;
    const spaces = all.filter((space) => {
      const held = heldBy(plant, space);
      return (
        !space.parts.some((part) => plant.parts[part]!.ownCharge) &&
        held.gas === 'refrigerant' &&
        aboveZero(plant, held)
      );
    });
    const [first] = spaces.map((space) => heldBy(plant, space));
    if (!first) return;
    here.report({
      message: (say) =>
        `No vacuum stands here: ${say.parts(spaces[0]!.parts)} hold ${first.refrigerant ?? 'refrigerant'} at up to ${gauge(here.plan, first.high)}, and nitrogen does not belong to it: break the vacuum between two pulls.`,
      slot: 'what',
      concerns: spaces.flatMap((space) => space.parts),
      related: first.since ? [{ cause: first.since, message: 'it holds this since here' }] : [],
    });
  },
});
