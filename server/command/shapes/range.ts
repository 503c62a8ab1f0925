import { z } from 'zod';

export const position = z
  .strictObject({
    line: z.int().nonnegative().describe('zero-based'),
    character: z.int().nonnegative().describe('zero-based, in UTF-16 units'),
  })
  .describe('as in the language-server protocol');
export type Position = z.infer<typeof position>;

export const range = z.strictObject({ start: position, end: position.describe('behind the last character') });
export type Range = z.infer<typeof range>;

export const fileName = z.string().describe('from the current folder, with "/"; "-" is standard input');
