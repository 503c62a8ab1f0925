import { bubblePressure, dewPressure, liquidDensity, type Refrigerant, vapourDensity } from '../../properties';
import type { Kind } from '../../quantity';
import { type Outcome, type Refusal, relation } from '../relation';

type Lookup = (refrigerant: Refrigerant, value: number) => number | null;

const source = 'property tables of the refrigerant, fitted to reference equations of state and mixture models';
const refrigerantInput = { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' } as const;

const outcome = (
  refrigerant: Refrigerant,
  what: string,
  kind: Kind,
  given: string,
  value: number | null,
  say: (kind: Kind, value: number) => string,
): Outcome | Refusal =>
  value === null
    ? { refused: `The tables of ${refrigerant.name} do not reach ${given}.` }
    : {
        value,
        workings: () => [`${what} of ${refrigerant.name} at ${given} = ${say(kind, value)}`],
      };

const shared = {
  group: 3,
  sources: [source],
  confidence: 'computed',
  validity: 'within the range of the refrigerant’s tables; nothing is guessed beyond',
} as const;

/** A property on the saturation line at a temperature. */
const atTemperature = (
  definition: { name: string; title: string; what: string; output: Kind; lookup: Lookup; assumption: string },
  examples: readonly (readonly [
    refrigerant: string,
    temperature: string,
    expect: string,
    tolerance: number,
    source: string,
  ])[],
) =>
  relation({
    ...shared,
    name: definition.name,
    title: definition.title,
    inputs: {
      refrigerant: refrigerantInput,
      temperature: { kind: 'temperature', title: 'temperature', from: 'the temperature asked' },
    },
    output: definition.output,
    formula: `${definition.what} by the property tables`,
    assumptions: [definition.assumption],
    examples: examples.map(([refrigerant, temperature, expect, tolerance, from]) => ({
      inputs: { refrigerant, temperature },
      expect,
      tolerance,
      source: from,
    })),
    compute: ({ refrigerant, temperature }, { say }) =>
      outcome(
        refrigerant,
        definition.what,
        definition.output,
        say('temperature', temperature),
        definition.lookup(refrigerant, temperature),
        say,
      ),
  });

const chart = 'handbook 3.5, saturation check values (charts agree within 1 psi)';
const asCharged = 'composition as charged; a leak changes it';

export const saturationBubblePressure = atTemperature(
  {
    name: 'bubble-pressure',
    title: 'Pressure at the bubble point',
    what: 'bubble pressure',
    output: 'pressure',
    lookup: bubblePressure,
    assumption: asCharged,
  },
  [
    ['R-22', '40 degF', '68.6 psig', 2e-3, 'handbook WE-48, public charts'],
    ['R-134a', '40 degF', '35.0 psig', 2e-3, 'handbook WE-48, public charts'],
    ['R-32', '40 degF', '121.0 psig', 2e-3, 'handbook WE-48'],
    ['R-454B', '105 degF', '325.4 psig', 3e-3, chart],
    ['R-448A', '115 degF', '300.7 psig', 3e-3, chart],
  ],
);

export const saturationDewPressure = atTemperature(
  {
    name: 'dew-pressure',
    title: 'Pressure at the dew point',
    what: 'dew pressure',
    output: 'pressure',
    lookup: dewPressure,
    assumption: asCharged,
  },
  [
    ['R-407C', '40 degF', '63.2 psig', 4e-3, chart],
    ['R-454B', '40 degF', '107.5 psig', 3e-3, chart],
    ['R-12', '40 degF', '36.9 psig', 2e-3, 'handbook WE-48'],
  ],
);

export const saturationLiquidDensity = atTemperature(
  {
    name: 'liquid-density',
    title: 'Density of the liquid',
    what: 'liquid density',
    output: 'density',
    lookup: liquidDensity,
    assumption: 'liquid at its bubble point',
  },
  [
    ['R-22', '77 degF', '1191 kg/m3', 1e-3, 'handbook 3.5, density at 77 degF'],
    ['R-454B', '77 degF', '986 kg/m3', 2e-3, 'handbook 3.5, density at 77 degF'],
  ],
);

export const saturationVapourDensity = atTemperature(
  {
    name: 'vapour-density',
    title: 'Density of the vapour',
    what: 'vapour density',
    output: 'density',
    lookup: vapourDensity,
    assumption: 'vapour at its dew point',
  },
  [['R-22', '40 degF', '24.3 kg/m3', 0.01, 'public tables of R-22: 1.52 lb/ft3 at 40 degF, from memory']],
);
