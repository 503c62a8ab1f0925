/** What client and server say to each other beyond the language-server protocol. */

/** What the client tells the server when it starts it. */
export interface StartOptions {
  /** True when the client answers the two requests of the file door, so that the server leaves the disk alone. */
  readonly door: boolean;
  /** True when the client opens addresses of `checkScheme` and shows the page that `checkRequest` gives. */
  readonly pages?: boolean;
}

export { passedBy } from '../engine/passed-by';

/** Server to client: the addresses of all job plan files in the workspace folders. No parameters; answers `string[]`. */
export const listRequest = 'jobplan/list';

/** Server to client: the text of one file, or null when it is not there or not inside a workspace folder. */
export const readRequest = 'jobplan/read';

export interface ReadParameters {
  readonly uri: string;
}

/** Client to server: the printed procedure of the plan in a file. Answers a `Sheet`, or null when there is no plan. */
export const sheetRequest = 'jobplan/sheet';

export interface SheetParameters {
  readonly uri: string;
  /** Line of the document, from zero: of several plans the one there is printed. */
  readonly line?: number;
}

export interface Sheet {
  /** A fragment of HTML without scripts; an element that prints a line of the plan says so in `data-line` (from 1). */
  readonly html: string;
  /** The style sheet that belongs to it; its body has the class `sheet`. */
  readonly style: string;
  /** The version of the document that was printed; null when the file is not open. */
  readonly version: number | null;
}

/** Client to server: the state of every part of the plan at a place. Answers a `StateAnswer`, or null without a plan. */
export const stateRequest = 'jobplan/state';

export interface StateParameters {
  readonly uri: string;
  /** Line of the document, from zero. */
  readonly line: number;
}

export interface StateAnswer {
  /** "after step 14 (evacuate each open part)", or "at the beginning". */
  readonly title: string;
  readonly parts: readonly { readonly name: string; readonly facts: readonly StateFact[] }[];
}

export interface StateFact {
  /** "holds nitrogen at 450 psig, since step 12 (pressure-test each open part)". */
  readonly text: string;
  /** Whether the step of the title made it so. */
  readonly fresh: boolean;
}

/** Client to server: the manual page of a check in Markdown. Parameters `{ name }`; answers a string, or null. */
export const checkRequest = 'jobplan/check';

export interface CheckParameters {
  readonly name: string;
}

/** Scheme of the addresses under which the client shows the pages of checks: `jobplan-check:/open-under-pressure.md`. */
export const checkScheme = 'jobplan-check';

/** Commands of the client that code lenses name. */
export const showProcedureCommand = 'jobplan.showProcedure';
export const showPlacesCommand = 'jobplan.showPlaces';

/** The view beside the explorer that tells how the circuit stands at the cursor. */
export const circuitView = 'jobplan.circuit';
/** The context under which the workbench shows that view: an editor with a plan is on the screen. */
export const planShownContext = 'jobplan.planShown';
