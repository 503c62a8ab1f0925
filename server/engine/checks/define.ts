import type { Cause, Plant } from '../circuit/state';
import type { Edit, Fix, Related, Severity } from '../finding';
import type { Bound } from '../plan/bind';
import type { Plan } from '../plan/plan';
import type { Span } from '../plan/read-terms';
import type { Declaration } from '../plan/scope';
import type { Step } from '../plan/step';
import type { Event } from '../steps/events';
import type { PlanView } from '../view';
import type { Entry } from '../walk/walk';

/** How a rule is known: the page says it, and a rule of thumb stays silent where a maker's sheet is cited. */
export type Ground = 'law' | 'published' | 'practice' | 'memory';

/**
 * A small plan for a check's page, run as a test. `steps` stands in the base plan's steps; in the wrong one, the line at which
 * the finding must stand ends with `# <- here`. `plan` adds or replaces statements of the plan's own block, by their word.
 */
export interface Example {
  readonly base: 'split' | 'heat-pump' | 'rack' | 'ductless';
  readonly steps?: string;
  readonly plan?: string;
  /** Declarations of the file that stand before the plan; they replace those of the same kind and name. */
  readonly file?: string;
  /** A record or the like that stands behind the plan. */
  readonly after?: string;
  /** Texts of the whole example that are put differently, so that an example shows only what it is about. */
  readonly instead?: readonly (readonly [text: string, by: string])[];
}

/** One check: one file, with its manual page and two examples that run as tests. */
export interface Check {
  readonly name: string;
  readonly severity: Severity;
  readonly title: string;
  /** What it means, and why the trade cares; whole sentences. */
  readonly meaning: string;
  readonly why: string;
  readonly source: string;
  readonly ground: Ground;
  /** The gravest cannot be accepted away. */
  readonly acceptable: boolean;
  /**
   * Why no one edit of the plan mends it, in one sentence for its page. A check either says so or offers a way out in its
   * wrong example; a test holds it to that.
   */
  readonly noFix?: string;
  /**
   * Checks whose finding is the cause of this one's: where both speak of the same parts, this one is shown as a related
   * place of theirs, so that one mistake gives one finding.
   */
  readonly yieldsTo?: readonly string[];
  /** What it looks at. A check of words alone says why in its file. */
  readonly reads: 'state' | 'figure' | 'words';
  readonly wrong: Example;
  readonly right: Example;
  /** Looks at what one step says, before it is walked: it is known with the key press, however long the plan is. */
  words?(said: Said): void;
  /** Looks at one walked step; must depend on the entry and the plan's head alone, since its result is kept with the entry. */
  step?(here: Here): void;
  /** Looks at the plan as a whole. */
  plan?(whole: Whole): void;
  /** Looks at a record of the work, held against its plan. */
  record?(record: RecordSeen): void;
}

/** Names steps and parts as people know them at the moment of reading, not of walking. */
export interface Say {
  /** "step 14 (evacuate each open part)". */
  step(cause: Cause | null): string;
  part(index: number): string;
  parts(indexes: readonly number[]): string;
}

export interface RelatedTo {
  readonly message: string | ((say: Say) => string);
  /** The step that left it so, a part of the circuit, or any statement. */
  readonly cause?: Cause | null;
  readonly part?: number;
  readonly bound?: Bound;
  readonly file?: string;
  readonly span?: Span;
}

/** A way out. `edits` is called when the finding is shown, with places as they are then. */
export interface WayOut {
  readonly title: string;
  readonly safe?: boolean;
  readonly edits: (mend: Mend) => readonly Edit[];
}

/** Makes edits in the plan's text. */
export interface Mend {
  /** New lines before or after a step, indented as it is. */
  insertBefore(step: Step, ...lines: readonly string[]): Edit | null;
  insertAfter(step: Step, ...lines: readonly string[]): Edit | null;
  /** Takes a step's whole statement out. */
  remove(step: Step): Edit | null;
  /** Replaces what a slot of the step says, its key included. */
  replace(step: Step, slot: string, text: string): Edit | null;
  /** Puts a text in place of a stretch of the step's statement. */
  write(step: Step, from: number, to: number, text: string): readonly Edit[];
  /** Adds a clause at the end of the step's line. */
  append(step: Step, text: string): Edit | null;
  /** Puts a step, with its block, before or after another one; nothing where either comes from a standard. */
  move(step: Step, to: 'before' | 'after', other: Step, as?: (text: string) => string): readonly Edit[];
  /** Puts a text in place of a stretch of any statement of the plan's file. */
  change(bound: Bound, span: Span, text: string): Edit;
  /** Adds lines at the end of a statement's block, which begins with them where there is none. */
  addTo(bound: Bound, ...lines: readonly string[]): Edit;
  /** The plan as it stands when the finding is shown, for a way out that looks at what comes before or after. */
  readonly view: PlanView;
}

export interface Report {
  readonly message: string | ((say: Say) => string);
  /** A slot of the step's form: the finding stands at it; else at the step's word. */
  readonly slot?: string;
  readonly severity?: Severity;
  readonly related?: readonly RelatedTo[];
  readonly fixes?: readonly WayOut[];
  /** Findings of one check with the same root are one: the first, with the others as related places. */
  readonly root?: unknown;
  /** The parts that it is about; all of them where nothing is said. Only `yieldsTo` asks. */
  readonly concerns?: readonly number[];
}

/** What a step check sees. */
export interface Here {
  readonly plan: Plan;
  readonly entry: Entry;
  readonly step: Step;
  readonly before: Plant;
  readonly after: Plant;
  /** The step's events of one type. */
  events<T extends Event['type']>(type: T): readonly Extract<Event, { type: T }>[];
  /** Whether the step cites the maker's sheet for its limits. */
  readonly per: string | null;
  report(report: Report): void;
}

/** What a check of words sees. */
export type Said = Pick<Here, 'plan' | 'step' | 'per' | 'report'>;

/** What a plan check sees. */
export interface Whole {
  readonly view: PlanView;
  readonly plan: Plan;
  readonly entries: readonly Entry[];
  /** At a step. */
  report(entry: Entry, report: Report): void;
  /** At any statement of the plan's file (or another). */
  reportAt(bound: Bound, span: Span, report: Omit<Report, 'slot'>, file?: string): void;
  /** At a part's statement in the circuit. */
  reportPart(part: number, report: Omit<Report, 'slot'>): void;
}

/** What a record check sees. */
export interface RecordSeen {
  readonly declaration: Declaration;
  /** The plan that it is of; null where there is none of that name. */
  readonly view: PlanView | null;
  /** The answers, by the label that heads them. */
  readonly answers: ReadonlyMap<string, Bound>;
  report(
    bound: Bound,
    span: Span,
    report: {
      readonly message: string;
      readonly severity?: Severity;
      readonly related?: readonly Related[];
      readonly fixes?: readonly Fix[];
    },
  ): void;
}

export const defineCheck = (check: Check): Check => check;
export type { Related };
