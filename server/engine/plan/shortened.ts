/** Characters of the author's text that a message repeats: no name or figure is longer by intent. */
const longest = 60;

/** A piece of the author's text as a message repeats it. */
export const shortened = (text: string): string => (text.length <= longest ? text : `${text.slice(0, longest - 1)}…`);
