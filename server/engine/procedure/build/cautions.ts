import { type Sentence, sentence } from '../sentence';
import type { Caution } from './cautions/caution';
import { charging } from './cautions/charge';
import { flowing } from './cautions/flow';
import { heating } from './cautions/heat';
import { opening } from './cautions/opening';
import { powering } from './cautions/power';
import { pressurising } from './cautions/pressure';
import { recovering } from './cautions/recovery';
import { standing } from './cautions/standing';
import { pumping } from './cautions/vacuum';
import type { Here } from './here';
import { inBlock } from './sheet';

// Dangers and what is done about them: handbook of the trade, safety by step (our own words). Each asks the walk.
const table: readonly Caution[] = [
  ...powering,
  ...recovering,
  ...opening,
  ...flowing,
  ...heating,
  ...pressurising,
  ...pumping,
  ...charging,
  ...standing,
];

/** The author's own warnings first, then what the walk knows of this step. */
export function cautionsOf(here: Here, ofBlock: readonly string[]): readonly Sentence[] {
  const authors = [...ofBlock, ...inBlock(here.step, 'caution').map((bound) => String(bound.values['text'] ?? ''))];
  const known = table.flatMap((caution) => {
    const said = caution(here);
    return said === null ? [] : [said];
  });
  return [...authors.map((text) => sentence(text)), ...known];
}
