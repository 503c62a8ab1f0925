import { type Form, isPositional, type Slot, type Word } from './vocabulary';

/** A slot of a form as people read it: `at PRESSURE`, with where it stands in the whole line. */
export interface FormPart {
  readonly name: string;
  readonly slot: Slot;
  readonly text: string;
  readonly optional: boolean;
  /** Offsets in the line that `formText` gives. */
  readonly from: number;
  readonly to: number;
}

export interface FormText {
  readonly text: string;
  readonly parts: readonly FormPart[];
}

const made = new WeakMap<Word, FormText>();

/** A word with its terms as one line: `purge PARTS [at PRESSURE] [for TIME]`. What may be left out stands in brackets. */
export function formText(word: Word): FormText {
  let known = made.get(word);
  if (!known) made.set(word, (known = make(word)));
  return known;
}

function make(word: Word): FormText {
  let text = word.label === 'must' ? `LABEL: ${word.word}` : word.word;
  const parts: FormPart[] = [];
  for (const [name, slot] of Object.entries(word.form)) {
    const optional = !isNeeded(slot);
    const own = slotText(slot);
    const shown = optional ? `[${own}]` : own;
    parts.push({ name, slot, text: own, optional, from: text.length + 1, to: text.length + 1 + shown.length });
    text += ` ${shown}`;
  }
  if (word.blockNeeded) text += ' { … }';
  else if (word.block) text += ' [{ … }]';
  return { text, parts };
}

/** Whether a statement must have this slot. A positional one may be left out only where it says so. */
export const isNeeded = (slot: Slot): boolean => (isPositional(slot) ? slot.optional !== true : slot.required === true);

/** `at PRESSURE`, `outdoors`, `PARTS`, `upright | inverted`. */
export function slotText(slot: Slot): string {
  if (isPositional(slot)) return shapeText(slot.term.shape);
  return slot.term ? `${slot.key} ${shapeText(slot.term.shape)}` : slot.key;
}

/** Shapes of kinds are in capitals; the words that a choice offers stand as they are written. */
const shapeText = (shape: string): string => {
  if (shape.includes(' | ') && !shape.startsWith('"')) return shape.split(' | ').map(one).join(' | ');
  return one(shape);
};
const kindShape =
  /^(number|length|area|volume|mass|time|temperature|pressure|share|power|density|torque|velocity|acid number|volume flow|mass flow|mass per length|temperature difference|pressure difference)( or .*)?(, …| \[.*\])?$/;
const one = (shape: string): string => (kindShape.test(shape) ? shape.toUpperCase() : shape);

/** Slots that take a quantity, a name, a text: everything of a form that is not a bare flag. */
export const slotsWithTerm = (form: Form): readonly (readonly [string, Slot])[] =>
  Object.entries(form).filter(([, slot]) => slot.term !== null);
