import type { ChecksLine, Reading, TextLine } from './document';
import type { Drawing } from './drawing/shape';
import type { Sentence } from './sentence';

/**
 * The sheet as a flat list of blocks in printing order, with all fixed wording in it. It is what the printers share:
 * each of them only decides how a block looks.
 */
export type Block =
  | HeadingBlock
  | ParagraphBlock
  | TableBlock
  | DrawingBlock
  | StepBlock
  | HoldBlock
  | BarBlock
  | RuledBlock
  | SignatureBlock;

export interface HeadingBlock {
  readonly kind: 'heading';
  /** 1: a section. 2: a part of a section, a phase. */
  readonly level: 1 | 2;
  readonly text: string;
  readonly anchor: string;
  readonly line: number | null;
  /** How many repeats it stands in. */
  readonly depth: number;
  /** Whether it starts a page of its own. */
  readonly newPage: boolean;
}

export interface ParagraphBlock {
  readonly kind: 'paragraph';
  readonly text: Sentence;
  readonly small: boolean;
  readonly indent: number;
  /** Stays on the page of what follows. */
  readonly keep: boolean;
}

export type Cell =
  | { readonly kind: 'text'; readonly text: Sentence }
  | { readonly kind: 'box' }
  | { readonly kind: 'write'; readonly unit: string };

export interface Column {
  readonly title: string;
  /** Share of the width; columns of boxes take what a box needs and have 0. */
  readonly share: number;
  readonly align: 'left' | 'right';
}

export interface TableBlock {
  readonly kind: 'table';
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

export interface DrawingBlock {
  readonly kind: 'drawing';
  readonly drawing: Drawing;
}

export interface StepBlock {
  readonly kind: 'step';
  /** How many repeats it stands in. */
  readonly depth: number;
  readonly anchor: string;
  readonly line: number | null;
  readonly number: string;
  readonly text: Sentence;
  readonly aim: Sentence;
  readonly cautions: readonly Sentence[];
  readonly lines: readonly (TextLine | ChecksLine | Reading)[];
  /** The anchor of the step that the crew goes back to. */
  readonly fails: { readonly text: Sentence; readonly anchor: string } | null;
}

export interface HoldBlock {
  readonly kind: 'hold';
  readonly depth: number;
  readonly anchor: string;
  readonly line: number | null;
  readonly number: string;
  readonly see: Sentence;
  readonly by: string;
}

/** Where rounds or a further visit begin or rounds end. */
export interface BarBlock {
  readonly kind: 'bar';
  readonly role: 'repeat' | 'repeat-end' | 'visit';
  readonly depth: number;
  readonly anchor: string;
  readonly line: number | null;
  readonly text: Sentence;
}

/** Empty lines to write on. */
export interface RuledBlock {
  readonly kind: 'ruled';
  readonly count: number;
}

export interface SignatureBlock {
  readonly kind: 'signatures';
  readonly roles: readonly string[];
}
