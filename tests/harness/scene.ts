import type { Step } from '../../server/engine/plan/step';
import type { PlanView } from '../../server/engine/view';
import type { Fault } from './trade/fault';

/** A statement of a steps block: its lines, its depth, and the words it begins with (label taken off). */
export interface Line {
  readonly from: number;
  readonly to: number;
  readonly depth: number;
  readonly label: string | null;
  readonly plain: string;
  readonly verb: string;
  /** The label that its `if-fails` goes back to. */
  readonly back: string | null;
}

/** A number with its unit that an edit changed; SI where both units are known, pressures over the atmosphere. */
export interface Figure {
  readonly was: number;
  readonly now: number;
  /** What the number stands behind: "to", "for", "rise at most", "with nitrogen at". */
  readonly key: string;
  readonly unit: string;
  readonly nowUnit: string;
}

/** The first operators, of one line or step each; `new`: what goes over several lines, or takes one word for another. */
export type EditSet = 'first' | 'new';

/** One edit of the text of a sound plan, made by an operator that knows nothing of the checks. */
export interface LineEdit {
  readonly operator: string;
  /** The file that is edited; the plan that is looked at may follow it. */
  readonly file: string;
  readonly plan: string;
  readonly what: string;
  readonly text: string;
  /** Zero-based lines of the edited text that the edit touched. */
  readonly touched: readonly number[];
  /** The step, or -1; the steps of the file as they were. */
  readonly at: number;
  readonly steps: readonly Line[];
  /** The step that the edited one changed places with, or those that it was moved past. */
  readonly past: readonly Line[];
  /** The steps that were left out, moved or copied together; null for the edits of one line. */
  readonly group: readonly Line[] | null;
  readonly set: EditSet;
  readonly was: string;
  readonly now: string;
  readonly source: string;
  readonly figure: Figure | null;
}

/** A plan before and after an edit, with what the rulings' own model stops at in each. */
export interface Scene {
  readonly edit: LineEdit;
  readonly before: PlanView;
  readonly after: PlanView | null;
  readonly faultsBefore: readonly Fault[];
  readonly faultsAfter: readonly Fault[];
}

/** What a practitioner says of an edit, with the lines at which a harmful one may be reported besides the touched ones. */
export interface Ruling {
  readonly verdict: 'harmful' | 'harmless' | 'unclear';
  readonly why: string;
  /** Steps that the edit breaks or that rely on it. */
  readonly steps: readonly Step[];
  /** Parts that it is about, by their index in the circuit of the edited plan. */
  readonly parts: readonly number[];
  /** Lines of the edited file that it is about, by their words. */
  readonly lines: RegExp | null;
}
export const harmful = (why: string, lines: RegExp | null = null): Ruling => ({
  verdict: 'harmful',
  why,
  steps: [],
  parts: [],
  lines,
});
export const harmless = (why: string): Ruling => ({ verdict: 'harmless', why, steps: [], parts: [], lines: null });
export const unclear = (why: string): Ruling => ({ verdict: 'unclear', why, steps: [], parts: [], lines: null });
