import { type Sentence, sentence } from '../../sentence';
import { classOf } from '../hazards';
import type { Here } from '../here';

/** One danger: what is printed with the triangle before a step; null where the walk shows no reason for it. */
export type Caution = (here: Here) => Sentence | null;

export const when = (asks: boolean, text: string): Sentence | null => (asks ? sentence(text) : null);

/** The least distance to what ignites, as makers of A2L equipment ask it (handbook section 11, from memory): 10 ft. */
export const fireNear = (refrigerant: string): Sentence =>
  sentence(
    `${refrigerant} burns (${classOf(refrigerant)}): detector on, air moving, nothing that sparks or glows within 10 ft; machine, hoses and pump made for its class.`,
  );
