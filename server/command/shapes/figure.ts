import { z } from 'zod';

/** A number, or a range of which both ends count. */
const value = z.number().optional().describe('in `unit`, full precision; left out where it is a range, or not known');
const low = z.number().optional().describe('least, where it is a range');
const high = z.number().optional().describe('most, where it is a range');

/** A computed figure with all that it rests on; `figure NAME --format json` writes one. */
export const figureReport = z
  .strictObject({
    name: z.string().describe('the relation: `jobplan explain NAME` shows its page'),
    subject: z.string().describe('what it is a figure of: a part, a line, the job'),
    unit: z.string().describe('SI; a pressure counts from absolute zero; "1" where it is a bare number'),
    value,
    low,
    high,
    shown: z.string().describe('as people read it, in their units'),
    inputs: z.record(
      z.string(),
      z.strictObject({
        value: z
          .union([z.number(), z.string()])
          .optional()
          .describe('a number in `unit`, or a name as of a refrigerant'),
        low,
        high,
        unit: z.string().describe('SI; empty for a name'),
        from: z.enum(['plan', 'computed', 'default', 'reference']),
      }),
    ),
    formula: z.string(),
    sources: z.array(z.string()),
    confidence: z.enum(['published', 'computed', 'practice', 'memory']),
    notes: z
      .array(z.string())
      .describe(
        'what a reader must know: a default taken, how far property tables are trusted, why there is no figure',
      ),
    missing: z.array(z.string()).describe('which line of a plan would give what is not known'),
  })
  .describe('A computed figure.');
export type FigureReport = z.infer<typeof figureReport>;

/** What `figure --format json` writes without a name. */
export const relationsReport = z
  .strictObject({
    version: z.literal(1),
    relations: z.array(
      z.strictObject({
        name: z.string(),
        title: z.string(),
        formula: z.string(),
        inputs: z.array(
          z.strictObject({
            name: z.string(),
            title: z.string(),
            kind: z.string().describe('what it measures: length, pressure, refrigerant …'),
            needed: z.boolean(),
            several: z.boolean().describe('may be given more than once'),
          }),
        ),
      }),
    ),
  })
  .describe('The relations that the engine knows.');
export type RelationsReport = z.infer<typeof relationsReport>;
