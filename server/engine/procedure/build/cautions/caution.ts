import { exactly } from '../../../quantity';
import { type Sentence, sentence } from '../../sentence';
import { classOf } from '../hazards';
import type { Here } from '../here';

/** One danger: what is printed with the triangle before a step; null where the walk shows no reason for it. */
export type Caution = (here: Here) => Sentence | null;

export const when = (asks: boolean, text: string): Sentence | null => (asks ? sentence(text) : null);

/** The least distance to what ignites, 10 ft, as makers of A2L equipment ask it (from memory), m. */
const keptFree = 3.048;

export const fireNear = (here: Here, refrigerant: string): Sentence =>
  sentence(
    `${refrigerant} burns (${classOf(refrigerant)}): detector on, air moving, nothing that sparks or glows within `,
    here.ruler.fact(exactly('length', keptFree), undefined, 2),
    '; machine, hoses and pump made for its class.',
  );
