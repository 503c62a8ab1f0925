import { defineCheck } from '../define';
import { edits } from '../support';

/** Air let into a vacuum. */
export const vacuumBrokenWithAir = defineCheck({
  name: 'vacuum-broken-with-air',
  severity: 'warning',
  title: 'A vacuum is broken with air, or with refrigerant that is let go',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'Air is let into a part that stands under vacuum; or refrigerant is, and the part is opened next, so that it goes into the air.',
  why: 'The vacuum drinks the moisture of the room: oil of the POE kind takes it up within minutes and no pump takes it out again.',
  source: 'common practice: dry nitrogen, at the end the refrigerant (handbook 8.2)',
  wrong: {
    base: 'split',
    instead: [
      [
        'evacuate each open part to 500 micron\n',
        'evacuate each open part to 1500 micron\n  break-vacuum with air to 0 psig # <- here\n  evacuate each open part to 500 micron\n',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    for (const entry of whole.entries)
      for (const event of entry.events) {
        if (event.type !== 'opens' || event.held.refrigerant === null || event.held.since === null) continue;
        const broken = whole.entries.find((each) => each.cause === event.held.since);
        if (!broken?.events.some((each) => each.type === 'pressurises' && each.medium === 'refrigerant')) continue;
        whole.report(broken, {
          message: (say) =>
            `The vacuum is broken with refrigerant, and ${say.step(entry.cause)} opens the circuit with it in: it is let go there; break it with dry nitrogen.`,
          slot: 'with',
          root: broken.cause,
          concerns: event.space.parts,
          related: [{ cause: entry.cause, message: 'it is opened here' }],
          fixes: [
            {
              title: 'With nitrogen',
              edits: (mend) => edits(mend.replace(broken.slot.step, 'with', 'with nitrogen')),
            },
          ],
        });
      }
  },
  step(here) {
    for (const event of here.events('pressurises')) {
      if (event.purpose !== 'break' || event.medium !== 'air' || event.spaces.length === 0) continue;
      const parts = event.spaces.flatMap((space) => space.parts);
      here.report({
        message: (say) => `Air goes into the vacuum of ${say.parts(parts)}: break it with dry nitrogen.`,
        slot: 'with',
        fixes: [{ title: 'With nitrogen', edits: (mend) => edits(mend.replace(here.step, 'with', 'with nitrogen')) }],
      });
    }
  },
});
