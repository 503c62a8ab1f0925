import { z } from 'zod';
import { fileName, range } from './range';

export const severity = z.enum(['error', 'warning', 'information']);

/** What `check --format json` writes. */
export const checkReport = z
  .strictObject({
    version: z.literal(1),
    findings: z
      .array(
        z.strictObject({
          name: z.string().describe('the check: `jobplan explain NAME` shows its page'),
          severity,
          file: fileName,
          message: z.string(),
          range,
          related: z
            .array(z.strictObject({ file: fileName, range, message: z.string() }))
            .describe('what has to do with it'),
          fixes: z
            .array(
              z.strictObject({
                title: z.string(),
                safe: z.boolean().describe('false where it changes an amount, an order or a step'),
                edits: z.array(
                  z.strictObject({ file: fileName, range, text: z.string().describe('what stands there after it') }),
                ),
              }),
            )
            .describe('ways out, each of them whole'),
        }),
      )
      .describe('by file, then by place'),
  })
  .describe('Findings of plan files.');
export type CheckReport = z.infer<typeof checkReport>;
export type ReportedFinding = CheckReport['findings'][number];
