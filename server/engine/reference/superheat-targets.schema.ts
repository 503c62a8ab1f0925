import { z } from 'zod';

/** Target superheat in °F by outdoor dry bulb (rows) and return wet bulb (columns); null where the table says not to charge so. */
export const superheatTable = z.object({
  source: z.string().min(20),
  confidence: z.enum(['published', 'computed', 'practice', 'memory']),
  unit: z.literal('degF'),
  wetBulb: z.array(z.number()).min(2),
  rows: z.array(z.object({ outdoors: z.number(), superheat: z.array(z.number().nullable()) })).min(2),
});

export type SuperheatTable = z.infer<typeof superheatTable>;
