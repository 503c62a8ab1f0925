import { z } from 'zod';

/** Rules that begin on a date. `verified` is false until somebody has read the rule, or a table made from it paragraph by paragraph. */
export const lawDatesTable = z.object({
  rows: z.array(
    z.object({
      name: z.string().regex(/^[a-z0-9-]+$/),
      /** Whose law it is. */
      law: z.enum(['US', 'EU']),
      /** The kinds of new equipment that a limit of warming potential holds for; null where it is no such limit. */
      equipment: z.array(z.string()).nullable(),
      from: z.iso.date(),
      subject: z.string().min(10),
      /** The warming potential from which on the rule forbids: what is allowed lies below it. */
      limit: z.number().nullable(),
      /** The refrigerants that the rule names, where it goes by no warming potential. */
      refrigerants: z.array(z.string().regex(/^R-/)).optional(),
      /** The limit holds for charges below this only, kg. */
      chargeBelow: z.number().positive().optional(),
      citation: z.string().min(5),
      confidence: z.enum(['published', 'computed', 'practice', 'memory']),
      verified: z.boolean(),
    }),
  ),
});

export type LawDatesTable = z.infer<typeof lawDatesTable>;
