import type { Drawing } from './drawing/shape';
import type { Amount, Sentence } from './sentence';

/**
 * The printable procedure as plain data: what stands on the sheet, in the units and words in which it is printed, and
 * nothing of how. HTML, PDF and plain text are printed from this one value.
 */
export interface Procedure {
  readonly head: Head;
  /** Units and site facts for the foot: "Units: inch-pound (SI in brackets). Gauge at 640 ft." */
  readonly units: string;
  /** Null for a plan without findings of error severity. */
  readonly draft: Draft | null;
  /** The job in ten lines. */
  readonly job: readonly Fact[];
  readonly notByTheBook: readonly Departure[];
  readonly packing: Packing;
  readonly drawings: readonly TitledDrawing[];
  readonly steps: readonly Entry[];
  readonly chargeAids: ChargeAids;
  readonly waste: readonly WasteContainer[];
  readonly putBack: readonly PutBack[];
  readonly record: RecordPage;
  /** Null unless workings were asked for. */
  readonly workings: readonly Working[] | null;
}

/** The sizes that a sheet is printed on, portrait. */
export type Paper = 'letter' | 'a4';

export interface Head {
  readonly job: string;
  readonly shop: string;
  readonly plan: string;
  readonly revision: string;
  readonly standard: { readonly name: string; readonly revision: string } | null;
  /** As written in the plan, null if it states none. */
  readonly date: string | null;
  /** All 64 hexadecimal signs; the printers show the first 8. */
  readonly contentHash: string;
}

/** A plan with findings at error severity: printed, but barred from use. */
export interface Draft {
  readonly errors: number;
}

export interface Fact {
  readonly label: string;
  readonly value: Sentence;
}

export interface Departure {
  readonly kind: 'departure' | 'maker' | 'accepted';
  readonly what: Sentence;
  readonly because: string;
  /** Who may sign for it; null where nobody needs to. */
  readonly signer: string | null;
  /** The step that it stands at, as numbered on the sheet. */
  readonly step: string | null;
}

export interface Packing {
  readonly materials: readonly Material[];
  readonly tools: readonly Tool[];
  readonly protection: readonly Tool[];
}

export interface Material {
  /** Whole containers: "2 x shop-flush, 1 gal". */
  readonly take: Sentence;
  /** The bare figure that the containers come from. */
  readonly needed: Amount | null;
  readonly why: string;
}

export interface Tool {
  readonly take: Sentence;
  /** The rating it must have, or what the paper must say. */
  readonly rating: Sentence;
  readonly why: string;
}

export interface TitledDrawing {
  readonly title: string;
  readonly drawing: Drawing;
}

/** Steps with what holds them together, as nested as the plan has it. */
export type Entry = Phase | Repeat | Visit | Step | Hold;

/** Where an entry comes from, for links between sheet and plan. `line` counts from 1 in the plan's own file. */
export interface Origin {
  readonly id: string;
  readonly line: number | null;
}

export interface Phase extends Origin {
  readonly kind: 'phase';
  readonly title: string;
  readonly entries: readonly Entry[];
}

export interface Repeat extends Origin {
  readonly kind: 'repeat';
  /** "until the solvent runs clear" */
  readonly until: Sentence;
  readonly least: number;
  readonly most: number;
  readonly entries: readonly Entry[];
}

export interface Visit extends Origin {
  readonly kind: 'visit';
  readonly title: string;
  /** "within 3 days" */
  readonly when: string;
  readonly entries: readonly Entry[];
}

export interface Step extends Origin {
  readonly kind: 'step';
  readonly number: string;
  readonly text: Sentence;
  /** What the step goes to, at the right of its sentence: "to 450 psig, 30 min". */
  readonly aim: Sentence;
  /** Who must do it; null for anyone of the crew. */
  readonly by: string | null;
  /** Printed before everything else of the step, each with its triangle. */
  readonly cautions: readonly Sentence[];
  readonly lines: readonly StepLine[];
  /** Names worked one after the other; each gets a box of its own, in each round. */
  readonly each: readonly string[];
  readonly because: string | null;
  readonly ifFails: IfFails | null;
}

export type StepLine = TextLine | ChecksLine | Reading;

export interface TextLine {
  readonly kind: 'text';
  /** In bold before the text; may be empty. */
  readonly label: string;
  readonly value: Sentence;
}

/** A row of boxes: stages of a pressure, windows to be passed. */
export interface ChecksLine {
  readonly kind: 'checks';
  readonly label: string;
  readonly items: readonly string[];
}

/** Blanks for one reading. A blank never stands without unit and limit. */
export interface Reading {
  readonly kind: 'reading';
  readonly label: string;
  /** One blank each: "____ psig at ____ °F". */
  readonly entries: readonly BlankEntry[];
  /** "at most 800 micron"; `forTheRecord` where the reading is taken and not judged. */
  readonly limit: Sentence;
  /** Whether the time is written beside it. */
  readonly time: boolean;
}

export interface BlankEntry {
  /** Stands before the blank: "at". Mostly empty. */
  readonly lead: string;
  readonly unit: string;
}

export interface IfFails {
  /** What is done before going back: "find it at 10 psig with bubbles, let down, remake". */
  readonly first: Sentence;
  /** Number and id of the step that the crew goes back to. */
  readonly backTo: { readonly number: string; readonly id: string };
  readonly most: number;
}

/** Nothing goes on until this is seen and signed. */
export interface Hold extends Origin {
  readonly kind: 'hold';
  readonly number: string;
  readonly see: Sentence;
  readonly by: string;
}

export interface ChargeAids {
  readonly strips: readonly PressureStrip[];
  readonly targets: readonly Fact[];
  readonly weights: readonly Fact[];
  readonly weighIn: WeighIn | null;
}

/** Saturation pressures of one refrigerant about the working point; bubble and dew never share a column. */
export interface PressureStrip {
  readonly refrigerant: string;
  readonly temperatureUnit: string;
  readonly pressureUnit: string;
  /** "liquid leaving the condenser: subcooling" */
  readonly bubbleUse: string;
  /** "vapour leaving the coil: superheat" */
  readonly dewUse: string;
  readonly rows: readonly StripRow[];
}

export interface StripRow {
  readonly temperature: string;
  readonly bubble: string;
  readonly dew: string;
  /** "condensing" or "evaporating" at the row of the working point. */
  readonly note: string | null;
}

export interface WeighIn {
  readonly cylinders: readonly string[];
  readonly unit: string;
  /** The limit of the sum of the differences. */
  readonly limit: Sentence;
}

export interface WasteContainer {
  readonly container: string;
  readonly contents: string;
  readonly most: Amount | null;
  /** The label's text, word for word. */
  readonly label: string;
  readonly goesTo: string;
}

export interface PutBack {
  readonly what: Sentence;
  /** How it must stand at the end: "open, cap on". */
  readonly stands: string;
  /** Number of the step that touched it, and of the one that puts it back if the plan has one. */
  readonly touched: string;
  readonly restored: string | null;
}

export interface RecordPage {
  readonly quantities: readonly RecordRow[];
  readonly readings: readonly RecordRow[];
  /** What a serial number is wanted of. */
  readonly serials: readonly string[];
  /** How many blank lines for departures made on site. */
  readonly departureLines: number;
  /** Who signs: technician, lead, owner. */
  readonly signatures: readonly string[];
}

export interface RecordRow {
  readonly what: string;
  readonly unit: string;
  /** What the plan expects, or the limit. */
  readonly planned: Sentence;
}

export interface Working {
  readonly subject: string;
  readonly name: string;
  readonly value: Amount | null;
  readonly formula: string;
  readonly inputs: readonly { readonly name: string; readonly shown: string; readonly from: string }[];
  readonly lines: readonly string[];
  readonly sources: readonly string[];
  readonly confidence: string;
  readonly notes: readonly string[];
}
