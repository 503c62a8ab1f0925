import { z } from 'zod';
import { figureReport } from './figure';

export const stepHandle = z
  .union([z.string(), z.int().positive()])
  .describe('the label of the step, or its number on the sheet');

const material = z.enum(['nitrogen', 'solvent', 'refrigerant', 'oil', 'recovery']);

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
    lines: z
      .array(z.strictObject({ part: z.string(), figures: z.array(figureReport) }))
      .describe('what each line is, and how it suits what will flow through it'),
    machine: z.array(figureReport).describe('what the machine is and becomes; no step bears these'),
    totals: z.array(figureReport),
    containers: z
      .array(
        z.strictObject({
          of: material,
          what: z.string().describe('what is in it'),
          container: z.string().describe('as the job calls it'),
          unit: z.string().describe('SI; a pressure counts from absolute zero, a weight is net'),
          start: z.number(),
          end: z.number(),
          shown: z.string().describe('as people read gauge or scale'),
          changed: stepHandle.nullable().describe('the step at which the next one is taken; null where it lasts'),
          price: z.string().nullable().describe('as the shop writes it'),
        }),
      )
      .describe('the stock container by container in the order of use, at the most rounds'),
    waste: z.array(
      z.strictObject({
        what: z.string(),
        container: z.string(),
        unit: z.string().nullable(),
        low: z.number().nullable().describe('null where the plan does not say how much comes out'),
        high: z.number().nullable(),
        shown: z.string(),
        keep: z.string().describe('what it must be kept apart from'),
      }),
    ),
    shortfalls: z
      .array(
        z.strictObject({
          of: material,
          what: z.string(),
          step: stepHandle.describe('the first step that the stock does not serve'),
          unit: z.string(),
          missing: z.number().describe('in all, from that step on'),
          shown: z.string(),
        }),
      )
      .describe('where the stated stock does not last; empty where none is stated'),
    defaults: z.array(z.string()).describe('every default that a figure takes, told once'),
  })
  .describe('Computed figures of a plan.');
export type TakeoffReport = z.infer<typeof takeoffReport>;

/** What `takeoff --format json` writes of a file that holds records and no plan. */
export const recordTakeoffReport = z
  .strictObject({
    version: z.literal(1),
    records: z.array(
      z.strictObject({
        record: z.string(),
        plan: z.string().nullable().describe('null where the plan is not found'),
        figures: z.array(
          z.strictObject({
            answer: z.string().nullable().describe('the label that is answered; null for the record as a whole'),
            figure: figureReport,
          }),
        ),
      }),
    ),
  })
  .describe('What the readings and weights of records mean.');
export type RecordTakeoffReport = z.infer<typeof recordTakeoffReport>;
