import { oxygenInAir, oxygenLeast } from '../../reference/nitrogen-practice';
import { defineCheck, type Whole } from '../define';
import { authority, shown } from '../support';
import { leadOutdoors, lettingOut } from '../ways-out';

/** Gas let go in the work space takes the place of its air. */
export const oxygenFalls = defineCheck({
  name: 'oxygen-falls',
  severity: 'error',
  title: 'Oxygen in the work space falls too low',
  acceptable: false,
  reads: 'figure',
  ground: 'law',
  meaning:
    'The nitrogen that the steps let go in the work space, with the ventilation that the site states, leaves less oxygen than may be worked in.',
  why: 'Nobody smells nitrogen; at low oxygen people fall without a warning, and so do those who come to help.',
  source: oxygenLeast.source,
  wrong: {
    base: 'split',
    instead: [
      ['work-space yard open-air', 'work-space closet 240 ft3'],
      ['release nitrogen outdoors', 'release nitrogen'],
      [
        'purge each kept line at 50 psig for 15 s into container',
        'purge each kept line at 50 psig for 15 s into container # <- here',
      ],
    ],
  },
  right: { base: 'split', instead: [['work-space yard open-air', 'work-space hall 9000 ft3']] },
  plan(whole) {
    const { below, after } = whole.view.takeOff.oxygen;
    const figure = below && after.get(below);
    const room = whole.plan.site.workSpace;
    if (!below || !figure?.quantity || !room) return;
    whole.report(below, {
      message: `The gas that is let go down to here leaves ${shown(whole.plan, figure.quantity)} of oxygen in the ${room.where} (${oxygenLeast.source}): lead the outlets outdoors, or ventilate and say so in the site's line; ${authority}.`,
      fixes: enoughStays(whole) ? leadOutdoors(lettingOut(whole.entries, 'any')) : [],
      related: [{ bound: room.bound, message: 'the work space' }],
    });
  },
});

/** Whether what cannot be led outdoors, as the nitrogen of brazing, leaves enough oxygen by itself. */
function enoughStays({ entries, view }: Whole): boolean {
  const led = new Set(lettingOut(entries, 'any'));
  const fresh = oxygenInAir.quantity.low;
  let before = fresh;
  let share = fresh;
  for (const entry of entries) {
    const after = view.takeOff.oxygen.after.get(entry)?.quantity?.low;
    if (after === undefined) continue;
    if (!led.has(entry)) share *= Math.min(1, after / before);
    before = after;
  }
  return share >= oxygenLeast.quantity.low;
}
