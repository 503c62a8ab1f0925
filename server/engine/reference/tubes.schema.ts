import { z } from 'zod';

const confidence = z.enum(['published', 'computed', 'practice', 'memory']);

/** ASTM B280 rows as printed: inches, and lb/ft for the printed weight of straight lengths. */
export const acrTable = z.object({
  source: z.string().min(20),
  confidence,
  unit: z.literal('in'),
  rows: z.array(
    z.object({
      size: z.string(),
      temper: z.enum(['annealed', 'drawn']),
      outsideDiameter: z.number().positive(),
      wall: z.number().positive(),
      thin: z.boolean(),
      diameterTolerance: z.number().positive(),
      wallTolerance: z.number().positive(),
      toleranceConfidence: confidence,
      printedWeight: z.number().positive().nullable(),
    }),
  ),
});

/** EN 12735-1 rows: millimetres; the inch series carries the trade size as its name. */
export const enTable = z.object({
  source: z.string().min(20),
  confidence,
  unit: z.literal('mm'),
  rows: z.array(
    z.object({
      size: z.string(),
      outsideDiameter: z.number().positive(),
      wall: z.number().positive(),
      series: z.enum(['metric', 'inch']),
    }),
  ),
});

export type AcrTable = z.infer<typeof acrTable>;
export type EnTable = z.infer<typeof enTable>;
