/**
 * The tree of a file: every character is in it. Statements are immutable and carry lengths, never absolute offsets, so
 * that an edit keeps every statement that it does not touch, by identity; all that is derived from a statement can
 * therefore be remembered by the statement itself.
 */

export type TokenKind =
  | 'word' // suction-line, R-454B, n2-250, A2L
  | 'string' // "maker's sheet, page 14"
  | 'quantity' // 7 lb 4 oz   30..90 s   8 Δ°F   1-1/8 in   15 %
  | 'number' // 4   0.5   1/2: a number that no known unit follows
  | 'date' // 2027-05-18   2029-06
  | 'time' // 08:05
  | 'comma'
  | 'colon'
  | 'arrow' // ->
  | 'open' // {
  | 'close' // }
  | 'space'
  | 'comment' // # to the end of the line
  | 'newline' // LF, CRLF or CR
  | 'error'; // characters that no token can hold

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
  /** Offset from the start of the statement (or blank, or file) that the token stands in, in UTF-16 units. */
  readonly at: number;
}

/** A fault of the text itself, at a range within the item that carries it. */
export interface SyntaxFault {
  readonly name:
    | 'unclosed-brace'
    | 'unclosed-quote'
    | 'stray-brace'
    | 'unreadable-text'
    | 'text-after-block'
    | 'missing-word'
    | 'too-deep'
    | 'too-large';
  readonly message: string;
  readonly from: number;
  readonly to: number;
}

/** `[label:] word terms [{ block }]`, with every blank, comment and fault in it. */
export interface Statement {
  readonly kind: 'statement';
  /** All tokens up to and including the block's brace or, without a block, the newline; trivia included. */
  readonly head: readonly Token[];
  readonly block: Block | null;
  /** What follows the block's closing brace: blanks, a comment, the newline. Empty without a block. */
  readonly tail: readonly Token[];
  /** Length of the whole statement, block and tail included. */
  readonly length: number;
  readonly faults: readonly SyntaxFault[];

  // The parts with meaning, found once by the parser; each is one of `head`.
  readonly label: Token | null;
  readonly word: Token | null;
  /** What follows the word, without trivia, without the brace. */
  readonly terms: readonly Token[];
}

export interface Block {
  readonly kind: 'block';
  readonly items: readonly Item[];
  /** The closing brace with the blanks before it; empty if the brace is missing. `at` counts from the block's start. */
  readonly close: readonly Token[];
  readonly length: number;
}

/** A line of blanks or of a comment alone. */
export interface Blank {
  readonly kind: 'blank';
  readonly head: readonly Token[];
  readonly length: number;
  readonly faults: readonly SyntaxFault[];
}

/** A closing brace that closes nothing, with what stands on its line. */
export interface Stray {
  readonly kind: 'stray';
  readonly head: readonly Token[];
  readonly length: number;
  readonly faults: readonly SyntaxFault[];
}

export type Item = Statement | Blank | Stray;

export interface Tree {
  /** A byte-order mark, if the text begins with one, else ''. */
  readonly mark: string;
  readonly items: readonly Item[];
  readonly length: number;
  readonly faults: readonly SyntaxFault[];
}
