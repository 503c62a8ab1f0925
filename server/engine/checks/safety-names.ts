/** What keeps people and machine safe; the names are those that plans give such things. */
const safety = /relief|switch|cut-?out|safety|limit|pressure-control|interlock/;

/** Whether something that can be put out of action keeps people and machine safe. */
export const isSafety = (name: string): boolean => safety.test(name);
