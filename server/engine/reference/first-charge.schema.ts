import { z } from 'zod';

/** First charge of a conversion in percent of the old one by mass. */
export const firstChargeTable = z.object({
  source: z.string().min(20),
  confidence: z.enum(['published', 'computed', 'practice', 'memory']),
  rows: z.array(
    z.object({
      to: z.array(z.string()).min(1),
      from: z.array(z.string()).min(1),
      percent: z.tuple([z.number().min(50), z.number().max(120)]),
    }),
  ),
});

export type FirstChargeTable = z.infer<typeof firstChargeTable>;
