import type { Statement, Token } from '../../../grammar/tree';
import type { Bound } from '../../engine/plan/bind';
import type { Place } from '../../engine/plan/vocabulary';
import type { BoundFile, Snapshot } from '../engine';

/** Where a completion is asked for. */
export interface Setting {
  readonly snapshot: Snapshot;
  readonly path: string;
  readonly file: BoundFile;
  readonly text: string;
  readonly offset: number;
  /** The place that the statement stands in, or would; undefined inside a block whose word is not known. */
  readonly place: Place | undefined;
  /** Bound statements around it, the outermost first. */
  readonly blocks: readonly Bound[];
  /** The statement of the cursor's line, if it has begun. */
  readonly statement: Statement | undefined;
  /** The statement's start, an offset of the file. */
  readonly start: number;
  /** Its tokens that end before what is being typed. */
  readonly before: readonly Token[];
  /** Where the word that is being typed begins. */
  readonly from: number;
  readonly lineStart: number;
}

/** One proposal of a completion. */
export interface Proposal {
  readonly label: string;
  readonly kind: 'word' | 'verb' | 'part-kind' | 'clause' | 'choice' | 'name' | 'unit' | 'value' | 'path';
  /** What it inserts, as a snippet; the label when missing. */
  readonly snippet?: string;
  /** Plain text in place of the snippet, for a client that takes none. */
  readonly plain?: string;
  /** Behind the label, in grey. */
  readonly detail?: string;
  /** Markdown. */
  readonly page?: string;
  /** Smaller comes first. */
  readonly rank: number;
  /** Where the replaced text begins, when it is not where the typed word does. */
  readonly from?: number;
  /** What is typed is compared with this, when it is not the label. */
  readonly filter?: string;
}
