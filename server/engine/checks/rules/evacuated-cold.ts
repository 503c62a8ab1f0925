import { coldestTube } from '../../reference/evacuation';
import { defineCheck } from '../define';
import { inOwn, shown } from '../support';

/** A pump put on tube so cold that water stays in it as ice. */
export const evacuatedCold = defineCheck({
  name: 'evacuated-cold',
  severity: 'warning',
  title: 'Evacuation with tube below 35 °F',
  acceptable: true,
  noFix:
    "No step warms a whole circuit: heat must be brought to it, or the day waited for, and the site's line then says the new temperature.",
  reads: 'figure',
  ground: 'published',
  meaning:
    'The coldest tube that the site states (or, if it states none, the weather) lies below 35 °F when a pump is put on.',
  why: 'Water freezes in the tube; ice leaves it too slowly for any pump, the gauge shows a good vacuum, and the water comes back with the heat.',
  source: `${coldestTube.source} (handbook 8.1, 8.2)`,
  wrong: {
    base: 'split',
    plan: 'site {\n  altitude 0 ft\n  outdoors 80 degF\n  indoors 75 degF, wet-bulb 63 degF\n  work-space yard open-air\n  smallest-room 9600 ft3\n  lowest-tube 25 degF\n}',
    instead: [['evacuate each open part to 500 micron', 'evacuate each open part to 500 micron # <- here']],
  },
  right: { base: 'split' },
  step(here) {
    if (here.events('evacuates').every((event) => event.spaces.length === 0)) return;
    const { lowestTube, outdoors } = here.plan.site;
    const coldest = lowestTube ?? outdoors;
    if (!coldest || here.per || coldest.quantity.low >= coldestTube.quantity.low - 0.01) return;
    here.report({
      message: `Tube at ${shown(here.plan, coldest.quantity)} keeps water as ice under the pump: warm it above ${inOwn(here.plan, '35 °F', '2 °C')} first (${coldestTube.source}).`,
      slot: 'what',
      root: here.plan.graph,
      related: [{ bound: coldest.bound, span: coldest.span, message: 'the temperature is stated here' }],
    });
  },
});
