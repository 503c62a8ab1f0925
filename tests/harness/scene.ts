/** A statement of a steps block: its lines, its depth, and the words it begins with (label taken off). */
export interface Line {
  readonly from: number;
  readonly to: number;
  readonly depth: number;
  readonly label: string | null;
  readonly plain: string;
  readonly verb: string;
}

/** What a ruling may look at: the words of the plan before the edit. */
export interface Scene {
  readonly steps: readonly Line[];
  readonly at: number;
  readonly source: string;
  readonly other?: Line;
  readonly was: string;
  readonly now: string;
}
