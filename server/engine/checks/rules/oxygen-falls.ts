import { oxygenLeast } from '../../reference/nitrogen-practice';
import { defineCheck } from '../define';
import { authority, shown } from '../support';

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
      ['work-space yard open-air', 'work-space closet 60 ft3'],
      ['release nitrogen outdoors', 'release nitrogen'],
      [
        '  blow-out each kept line at 50 psig for 30 s into container',
        '  blow-out each kept line at 50 psig for 30 s into container # <- here',
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
      related: [{ bound: room.bound, message: 'the work space' }],
    });
  },
});
