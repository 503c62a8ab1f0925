import { z } from 'zod';
import { fileName } from './range';

/** What `format --format json` writes. */
export const formatReport = z
  .strictObject({
    version: z.literal(1),
    files: z.array(
      z.strictObject({ file: fileName, changed: z.boolean().describe('it is laid out otherwise, or was') }),
    ),
  })
  .describe('Which files are, or were, laid out otherwise.');
export type FormatReport = z.infer<typeof formatReport>;
