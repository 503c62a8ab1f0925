/** A figure in the plan's units, with its twin in the other system where one is given. */
export interface Amount {
  readonly kind: 'amount';
  /** As people read it, unit included: "450 psig". Text of the author is carried over untouched. */
  readonly main: string;
  /** The same in the other system: "3103 kPa gauge". Null where there is none (a count, a share). */
  readonly other: string | null;
  /** Computed figures carry a mark in print; the author's do not. */
  readonly computed: boolean;
}

export interface Words {
  readonly kind: 'words' | 'strong' | 'small';
  readonly text: string;
}

/** A name of the plan (a part, a cylinder, a step's label): never broken over two lines. */
export interface Name {
  readonly kind: 'name';
  readonly text: string;
}

export type Run = Words | Name | Amount;

/** Running text of the sheet. An empty sentence prints nothing. */
export type Sentence = readonly Run[];

/** The sign behind a computed figure; the foot of each page says what it means. */
export const computedMark = '*';

export const words = (text: string): Words => ({ kind: 'words', text });
export const strong = (text: string): Words => ({ kind: 'strong', text });
export const small = (text: string): Words => ({ kind: 'small', text });
export const name = (text: string): Name => ({ kind: 'name', text });
export const amount = (main: string, other: string | null = null): Amount => ({
  kind: 'amount',
  main,
  other,
  computed: false,
});
export const computed = (main: string, other: string | null = null): Amount => ({
  kind: 'amount',
  main,
  other,
  computed: true,
});

/** A sentence from its pieces; bare strings are plain words. */
export const sentence = (...pieces: readonly (string | Run)[]): Sentence =>
  pieces.map((piece) => (typeof piece === 'string' ? words(piece) : piece));

export type SpanStyle = 'plain' | 'strong' | 'small';

/** A stretch of one style. `solid` ones stay on one line where they fit on one. */
export interface Span {
  readonly text: string;
  readonly style: SpanStyle;
  readonly solid: boolean;
}

/** The sentence as stretches of one style, figures written out with their mark and their twin in brackets. */
export function spans(runs: Sentence): readonly Span[] {
  return runs.flatMap((run): Span[] => {
    if (run.kind === 'words') return [{ text: run.text, style: 'plain', solid: false }];
    if (run.kind === 'amount') {
      const main: Span = { text: run.main + (run.computed ? computedMark : ''), style: 'plain', solid: true };
      if (run.other === null) return [main];
      return [
        main,
        { text: ' ', style: 'plain', solid: false },
        { text: `(${run.other})`, style: 'small', solid: true },
      ];
    }
    if (run.kind === 'name') return [{ text: run.text, style: 'plain', solid: true }];
    return [{ text: run.text, style: run.kind, solid: false }];
  });
}

/** The sentence without any style: for the text printer, for widths and for tests. */
export const plainText = (runs: Sentence): string =>
  spans(runs)
    .map((span) => span.text)
    .join('');
