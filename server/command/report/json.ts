/** A result for other programs, one value on its own lines. */
export const jsonText = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
