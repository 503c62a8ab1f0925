import { spacesOf } from '../../circuit/spaces';
import { defineCheck } from '../define';
import { heldBy, underPressure } from '../plant';
import { edits, gauge } from '../support';

/** A vacuum pump opened to test nitrogen. */
export const pumpOntoPressure = defineCheck({
  name: 'pump-onto-pressure',
  severity: 'error',
  title: 'A vacuum pump is opened to pressure',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['charge-still-in'],
  meaning: 'The part still holds more than about 5 psig of nitrogen or other gas when the pump is put on.',
  why: 'The pump throws its oil out, its housing or the gauge bursts.',
  source: 'at most about 5 psig: common practice, no source',
  wrong: {
    base: 'split',
    instead: [
      ['release nitrogen outdoors\n', ''],
      ['evacuate each open part to 500 micron', 'evacuate each open part to 500 micron # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    for (const event of here.events('evacuates')) {
      for (const space of event.spaces) {
        const held = heldBy(here.before, spacesOf(here.before, space.parts[0]!)[0] ?? space);
        if (held.gas === 'refrigerant' || !underPressure(here.before, held)) continue;
        here.report({
          message: (say) =>
            `${say.parts(space.parts)} still ${space.parts.length > 1 ? 'hold' : 'holds'} ${held.gas} at ${gauge(here.plan, held.high)} when the pump is put on: release it first.`,
          slot: 'what',
          root: held.since,
          concerns: space.parts,
          related: [{ cause: held.since, message: 'it was let in here' }],
          fixes: [
            {
              title: 'Release the nitrogen before this step',
              edits: (mend) => edits(mend.insertBefore(here.step, 'release nitrogen outdoors')),
            },
          ],
        });
      }
    }
  },
});
