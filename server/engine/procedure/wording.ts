import type { Draft, Head } from './document';
import { computedMark } from './sentence';

/** How many signs of the content hash stand in the head: enough to tell two prints apart by eye. */
const shownHash = 8;

export const printAgain = 'Print again if the revision on file is higher.';
export const orderOfAuthority =
  'Local code and the authority come first, then the maker’s sheet, then this sheet. Certified people only.';
export const markMeaning = `${computedMark} computed; unmarked figures are the plan’s.`;

export const draftBar = (draft: Draft): string =>
  `NOT FOR WORK: ${draft.errors} ${draft.errors === 1 ? 'error' : 'errors'}`;

export const headPlan = (head: Head): string => `Plan ${head.plan}, revision ${head.revision}`;

export const headStandard = (head: Head): string =>
  head.standard === null ? 'No standard' : `Standard ${head.standard.name}, revision ${head.standard.revision}`;

export const headDate = (head: Head): string => (head.date === null ? 'No date' : `Dated ${head.date}`);

export const headHash = (head: Head): string => `Content ${head.contentHash.slice(0, shownHash)}`;

export const pageOf = (page: number, pages: number): string => `Page ${page} of ${pages}`;
