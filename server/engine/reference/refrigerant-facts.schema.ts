import { z } from 'zod';

const confidence = z.enum(['published', 'computed', 'practice', 'memory']);
const range = z.tuple([z.number().nonnegative(), z.number().nonnegative()]);
const oil = z.enum(['mineral', 'alkylbenzene', 'POE', 'PVE', 'PAG', 'PAO']);
const name = z.string().regex(/^R-\d/);

/** One line a refrigerant, in the units that `units` names. A null is a fact that the sources seen do not give. */
export const refrigerantFactsTable = z.object({
  source: z.string().min(20),
  units: z.record(z.string(), z.string()),
  rows: z.array(
    z.object({
      name,
      formula: z.string().nullable(),
      composition: z.array(z.object({ refrigerant: name, massPercent: z.number().positive() })).nullable(),
      safetyClass: z.enum(['A1', 'A2L', 'A2', 'A3', 'B1', 'B2L', 'B2', 'B3']).nullable(),
      classConfidence: confidence,
      flammabilityLimit: range.nullable(),
      concentrationLimit: range.nullable(),
      concentrationLimitPpm: range.nullable(),
      limitConfidence: confidence,
      warming4: z.number().nonnegative(),
      warming5: z.number().nonnegative(),
      warmingConfidence: confidence,
      oils: z.array(oil),
      oilsWithCare: z.array(oil),
      replaces: z.array(name),
      ozoneDepleting: z.boolean(),
      glide: z.number().nonnegative(),
      newEquipmentOnly: z.boolean(),
      note: z.string().nullable(),
    }),
  ),
});

export type RefrigerantFactsTable = z.infer<typeof refrigerantFactsTable>;
export type SafetyClass = NonNullable<RefrigerantFactsTable['rows'][number]['safetyClass']>;
export type OilFamily = z.infer<typeof oil>;
