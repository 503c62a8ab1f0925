import { z } from 'zod';
import { figureReport } from './figure';

export const stepHandle = z
  .union([z.string(), z.int().positive()])
  .describe('the label of the step, or its number on the sheet');

/** What `takeoff --format json` writes. */
export const takeoffReport = z
  .strictObject({
    version: z.literal(1),
    plan: z.string(),
    revision: z.number().nullable().describe('null where the plan states none'),
    steps: z
      .array(
        z.strictObject({
          step: stepHandle,
          subject: z.string().describe('what the figures are of: a part, a line, the job'),
          line: z.int().nonnegative().describe('of the step, zero-based, in the file that it is written in'),
          figures: z.array(figureReport),
        }),
      )
      .describe('in the order of the work; a step with figures of several subjects stands once for each'),
    totals: z.array(figureReport),
  })
  .describe('Computed figures of a plan.');
export type TakeoffReport = z.infer<typeof takeoffReport>;
