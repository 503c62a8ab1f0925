/** Wrong usage, or a file that cannot be read: the message goes to standard error, and the exit status is 2. */
export class Trouble extends Error {}

/** Exit statuses: nothing wrong, something found, not done. */
export const fine = 0;
export const found = 1;
export const notDone = 2;
