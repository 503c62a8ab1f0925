import { z } from 'zod';
import { fileName } from './range';
import { stepHandle } from './takeoff';

export const partState = z.strictObject({
  mounted: z.boolean(),
  holds: z
    .string()
    .describe(
      'a refrigerant, "air", "nitrogen", "nitrogen with" a refrigerant, "vacuum"; both, joined by " / ", where two passages differ',
    ),
  pressure: z.number().optional().describe('Pa absolute; left out where it is a range'),
  low: z.number().optional().describe('least pressure, Pa absolute'),
  high: z.number().optional().describe('greatest pressure, Pa absolute'),
  openEnds: z.array(
    z.strictObject({
      end: z
        .string()
        .describe('"inlet" or "outlet" in the direction of flow; with the number of the passage where there are two'),
      opening: z.number().nullable().describe('diameter, m; null where it is not known'),
    }),
  ),
  sharesWith: z.array(z.string()).describe('the other parts in the same space'),
  wet: z.boolean().describe('with solvent'),
  tested: z.boolean().describe('a pressure test has passed, and nothing undone it'),
  decayTested: z.boolean(),
});
export type PartReport = z.infer<typeof partState>;

/** What `state --format json` writes. */
export const stateReport = z
  .strictObject({
    version: z.literal(1),
    steps: z
      .array(
        z.strictObject({
          step: stepHandle,
          text: z.string().describe('the first line of the step as written'),
          file: fileName,
          line: z.int().nonnegative().describe('zero-based'),
          round: z
            .int()
            .positive()
            .optional()
            .describe('in a repeat, of which the first and the last round are walked'),
          parts: z.record(z.string(), partState),
        }),
      )
      .describe('the state after each step'),
  })
  .describe('What each part of a circuit holds and how it stands, step by step.');
export type StateReport = z.infer<typeof stateReport>;
