import type { Item } from '../../grammar/tree';

export type Severity = 'error' | 'warning' | 'information';

/** A range inside one item of a file. Absolute offsets are made at the edge, from the file's tree. */
export interface Place {
  readonly file: string;
  readonly item: Item;
  /** UTF-16 offsets from the item's start. */
  readonly from: number;
  readonly to: number;
}

export interface Related {
  readonly at: Place;
  readonly message: string;
}

export interface Edit {
  readonly at: Place;
  readonly text: string;
}

/** An edit that mends a finding. Whatever changes an amount, an order or a step is a suggestion, never safe. */
export interface Fix {
  readonly title: string;
  readonly safe: boolean;
  readonly edits: readonly Edit[];
}

export interface Finding {
  /** The check's name: `explain NAME` and the editor's link show its page. */
  readonly name: string;
  readonly severity: Severity;
  readonly message: string;
  readonly at: Place;
  readonly related: readonly Related[];
  readonly fixes: readonly Fix[];
}
