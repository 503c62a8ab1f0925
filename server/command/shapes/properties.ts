import { z } from 'zod';

const kelvin = z.number().describe('K');
const pascal = z.number().describe('Pa absolute');
const density = z.number().optional().describe('kg/m3, saturated');
const enthalpy = z.number().optional().describe('J/kg; only differences within one refrigerant mean anything');

/** What `properties --format json` writes. */
export const propertiesReport = z
  .strictObject({
    version: z.literal(1),
    refrigerant: z.string(),
    trust: z
      .strictObject({
        pressure: z.number().describe('how far a pressure may be off, as a share of it'),
        density: z.number().describe('how far a density may be off, as a share of it'),
        note: z.string().describe('what the tables rest on'),
      })
      .describe('how far the model behind the tables is to be trusted'),
    points: z
      .array(
        z.strictObject({
          at: z.union([z.strictObject({ temperature: kelvin }), z.strictObject({ pressure: pascal })]),
          bubblePressure: pascal.optional(),
          dewPressure: pascal.optional(),
          liquidDensity: density,
          vapourDensity: density,
          liquidEnthalpy: enthalpy,
          vapourEnthalpy: enthalpy,
          bubbleTemperature: kelvin.optional(),
          dewTemperature: kelvin.optional(),
          outside: z.string().optional().describe('why a figure is left out: the tables do not reach there'),
        }),
      )
      .describe('in the order asked'),
  })
  .describe('Saturation properties of a refrigerant.');
export type PropertiesReport = z.infer<typeof propertiesReport>;
export type PropertiesPoint = PropertiesReport['points'][number];
