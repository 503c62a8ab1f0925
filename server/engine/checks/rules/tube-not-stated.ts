import type { Part } from '../../circuit/graph';
import { type Bound, child } from '../../plan/bind';
import { defineCheck } from '../define';
import { changesRefrigerant, lines } from '../plant-facts';

/** A kept line of which nobody knows the tube, while gas under pressure or solvent goes through it. */
export const tubeNotStated = defineCheck({
  name: 'tube-not-stated',
  severity: 'warning',
  title: 'Diameter and wall of a kept line are not known',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'A line that stays is flushed, or gets another refrigerant, and the plan states no tube for it; or it states a diameter with neither a table nor a wall.',
  why: 'Neither its rating nor the solvent and the time that it takes can be worked out.',
  source: 'common practice: diameter and wall are measured at the cut-out',
  wrong: {
    base: 'split',
    instead: [['liquid-line kept {\n      tube 3/8 in ACR', 'liquid-line kept { # <- here\n      tube 3/8 in']],
  },
  right: { base: 'split' },
  plan(whole) {
    const flushed = new Set(
      whole.entries.flatMap((entry) =>
        entry.events.flatMap((event) => (event.type === 'flows' && event.purpose === 'flush' ? [event.line] : [])),
      ),
    );
    for (const part of lines(whole.plan)) {
      const block = whole.plan.partStatements[part.index]?.block ?? [];
      const tube = child(block, 'tube');
      if (
        part.standing === 'kept' &&
        part.properties.rated === undefined &&
        child(block, 'wall') === undefined &&
        isAssumed(part, tube)
      ) {
        whole.reportPart(part.index, {
          message: `Nobody states the wall of ${part.name}: "${part.properties.tube!.shown}" names no table, and the wall of ASTM B280 is only assumed; write "ACR", or "wall … measured".`,
          fixes: [
            {
              title: 'It is ACR tube',
              edits: () => [
                {
                  at: {
                    file: whole.plan.file,
                    item: tube!.item,
                    from: tube!.spans['outside']!.to,
                    to: tube!.spans['outside']!.to,
                  },
                  text: ' ACR',
                },
              ],
            },
          ],
        });
        continue;
      }
      const stays = part.standing === 'kept' && changesRefrigerant(whole.plan);
      if (part.properties.tube || part.properties.rated !== undefined) continue;
      if (!flushed.has(part.index) && !stays) continue;
      whole.reportPart(part.index, {
        message: `The tube of ${part.name} is not stated: measure diameter and wall, and write "tube … ACR" (and "wall … measured") in its block.`,
      });
    }
  },
});

/** A diameter alone: the table is taken for granted, and line sets of thinner wall are on the market. */
const isAssumed = (part: Part, tube: Bound | undefined): boolean =>
  part.properties.tube !== undefined &&
  !part.properties.tube.measured &&
  tube?.spans['outside'] !== undefined &&
  tube.values['standard'] === undefined &&
  typeof tube.values['outside'] === 'object' &&
  'literal' in (tube.values['outside'] as object);
