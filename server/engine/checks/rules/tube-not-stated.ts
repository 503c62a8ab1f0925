import { defineCheck } from '../define';
import { lines } from '../plant-facts';

/** A kept line of which nobody knows the tube, while gas under pressure or solvent goes through it. */
export const tubeNotStated = defineCheck({
  name: 'tube-not-stated',
  severity: 'warning',
  title: 'Diameter and wall of a kept line are not known',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning: 'A line that stays is flushed, and the plan states no tube for it.',
  why: 'Neither its rating nor the solvent and the time that it takes can be worked out.',
  source: 'common practice: diameter and wall are measured at the cut-out',
  wrong: { base: 'split', instead: [['liquid-line kept {\n      tube 3/8 in ACR', 'liquid-line kept { # <- here']] },
  right: { base: 'split' },
  plan(whole) {
    const flushed = new Set(
      whole.entries.flatMap((entry) =>
        entry.events.flatMap((event) => (event.type === 'flows' && event.purpose === 'flush' ? [event.line] : [])),
      ),
    );
    for (const part of lines(whole.plan)) {
      if (part.properties.tube || part.properties.rated !== undefined || !flushed.has(part.index)) continue;
      whole.reportPart(part.index, {
        message: `The tube of ${part.name} is not stated: measure diameter and wall, and write "tube … ACR" (and "wall … measured") in its block.`,
      });
    }
  },
});
