import type { Entry } from '../../walk/walk';
import { defineCheck } from '../define';
import { isHeatPump } from '../plant-facts';
import { insertBefore } from '../ways-out';

/** A charge judged by the plate's target while the machine heats. */
export const adjustedInHeating = defineCheck({
  name: 'adjusted-in-heating',
  severity: 'warning',
  title: 'The charge is adjusted while the machine runs in heating',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['adjusted-before-running', 'wrong-charge-target'],
  meaning:
    'A machine that turns round was last started in heating, and a step trims its charge by subcooling or superheat. A charge that is weighed in, and a step that cites a sheet with `per`, are not meant.',
  why: 'The target of the plate is that of cooling: in heating the two coils change places, one of them holds more liquid, and the machine is overfilled or starved by summer.',
  source:
    'the targets of California Title 24 reference appendix RA3.2 are those of cooling (handbook 9.2); heating by the maker’s sheet or by weight: common practice, no source',
  wrong: {
    base: 'heat-pump',
    instead: [
      ['start system\n', 'start system in cooling\n    start system in heating\n'],
      ['adjust charge after 15 min', 'adjust charge after 15 min # <- here'],
    ],
  },
  right: {
    base: 'heat-pump',
    instead: [
      ['start system\n', 'start system in cooling\n'],
      ['adjust charge after 15 min\n', 'adjust charge after 15 min\n    start system in heating\n'],
    ],
  },
  plan(whole) {
    if (!isHeatPump(whole.plan)) return;
    let turned: Entry | null = null;
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        if (event.type === 'starts') turned = event.mode === 'heating' ? entry : null;
        if (event.type !== 'adjusts' || event.what !== 'charge' || typeof event.to === 'string' || !turned) continue;
        if (typeof entry.slot.step.values['per'] === 'string') continue;
        const { cause } = turned;
        whole.report(entry, {
          message: (say) =>
            `The charge is adjusted while the machine heats, since ${say.step(cause)}, and the plate’s target is that of cooling (common practice, no source): turn it to cooling first, weigh the charge in, or cite the sheet.`,
          slot: 'what',
          related: [{ cause, message: 'it was turned to heating here' }],
          fixes: [insertBefore('Turn it to cooling first', entry.slot.step, 'start system in cooling')],
        });
      }
    }
  },
});
