import { z } from 'zod';

/** What `explain --format json` writes. */
export const explainReport = z
  .strictObject({
    version: z.literal(1),
    name: z.string(),
    pages: z
      .array(
        z.strictObject({
          kind: z.enum(['check', 'word', 'figure']),
          title: z.string(),
          sections: z.array(z.strictObject({ heading: z.string(), text: z.string() })),
        }),
      )
      .describe('more than one where the name stands for several things'),
  })
  .describe('The manual of a check, a word of the language or a figure.');
export type ExplainReport = z.infer<typeof explainReport>;
export type ManualPage = ExplainReport['pages'][number];
