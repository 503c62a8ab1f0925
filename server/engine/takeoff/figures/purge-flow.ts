import { nitrogenMass, nitrogenStandardVolume } from '../../properties';
import { purgeThrough } from '../../properties/gas-flow';
import { gasTemperature, openingCoefficient, regulatorMostFlow } from '../../reference/nitrogen-practice';
import { psi } from '../../reference/table-units';
import { relation } from '../relation';

/** N of a pound-force: a square inch at one psi. */
const poundForce = 4.4482216152605;

/** Nitrogen through a line into the open while it is purged, m3/s at 70 °F and 1 atm. */
export const purgeFlow = relation({
  name: 'purge-flow',
  title: 'Nitrogen flow of a purge',
  group: 6,
  inputs: {
    pressure: {
      kind: 'pressure',
      title: 'purge pressure',
      from: 'the pressure in the `purge` step',
      valid: [5e4, 600 * psi],
    },
    opening: {
      kind: 'length',
      as: 'in',
      title: 'opening at the far end',
      from: '`crimp … leaving`, or `tube` of the line',
      valid: [0.2e-3, 0.15],
    },
    bore: {
      kind: 'length',
      as: 'in',
      title: 'bore of the line',
      from: '`tube` of the line',
      optional: true,
      valid: [0.5e-3, 0.3],
    },
    length: {
      kind: 'length',
      title: 'length of the line',
      from: '`length` of the line',
      optional: true,
      valid: [0, 2000],
    },
    coefficient: {
      kind: 'share',
      title: 'discharge coefficient',
      from: 'nothing in the plan',
      default: openingCoefficient,
      valid: [0.3, 1],
    },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the gas',
      from: '`outdoors` of the site',
      default: gasTemperature,
      valid: [240, 345],
    },
    regulator: {
      kind: 'volume-flow',
      as: 'scfm',
      title: 'most that the regulator passes',
      from: '`flow` of the regulator',
      default: regulatorMostFlow,
    },
  },
  output: 'volume-flow',
  outputUnit: 'scfm',
  formula:
    'm = Cd × A × p × √(γ/RT) × (2/(γ+1))^((γ+1)/(2(γ-1))) at the opening, with p after the friction of the line (Churchill), and not more than the regulator passes',
  validity:
    'steady flow of nitrogen up to 600 psig; choked where the pressure before the opening is above 1.89 times the atmosphere',
  sources: ['isentropic nozzle flow of an ideal gas, text-book closed form', 'friction factor: Churchill 1977'],
  confidence: 'computed',
  assumptions: [
    'gas at the temperature of the tube',
    'the crimped end passes like a round hole of the size left open',
    'shots of solvent ahead of the gas are left out',
  ],
  examples: (
    [
      ['100 psig', '0.190 in', '49 scfm', 0.8],
      ['100 psig', '0.311 in', '131 scfm', 0.8],
      ['50 psig', '0.311 in', '74 scfm', 0.8],
      ['150 psig', '0.125 in', '30 scfm', 0.8],
      ['100 psig', '0.190 in', '61 scfm', 1],
      ['50 psig', '0.311 in', '92.5 scfm', 1],
    ] as const
  ).map(([pressure, opening, expect, coefficient]) => ({
    inputs: { pressure, opening, coefficient: `${coefficient * 100} %`, regulator: '1000 scfm' },
    expect,
    tolerance: 0.015,
    source: 'handbook 6.4, choked flow in closed form',
  })),
  compute: ({ pressure, opening, bore, length, coefficient, temperature, regulator }, { say, atmosphere, system }) => {
    const gauge = (value: number): string => say('pressure', value);
    if (pressure <= atmosphere) return { refused: `At ${gauge(pressure)} nothing flows out into the atmosphere.` };
    const area = (Math.PI / 4) * Math.min(opening, bore ?? opening) ** 2;
    const line = bore !== undefined && length !== undefined ? { bore, length } : null;
    const purge = purgeThrough(line, { area, coefficient }, pressure, atmosphere, temperature);
    const free = nitrogenStandardVolume(purge.flow);
    const value = Math.min(free, regulator);
    const flow = (one: number): string => say('volume-flow', one, 'scfm');
    const perForce = (rate: number): string =>
      system === 'si'
        ? `${say('mass-flow', rate * 1000)} for each kN`
        : `${say('mass-flow', rate * poundForce, 'lb/min')} for each lb`;
    return {
      value,
      notes: [
        'Counted at 70 °F and 1 atm.',
        ...(free > regulator
          ? ['Line and opening would pass more than the regulator: what the regulator passes counts.']
          : []),
      ],
      workings: () => [
        `area of the opening = π/4 × (${say('length', Math.min(opening, bore ?? opening), 'in')})² = ${say('area', area, 'in2')}`,
        ...(line
          ? [
              `after the friction of ${say('length', line.length)} of line the gas has ${gauge(purge.endPressure)} before the opening`,
            ]
          : []),
        `${purge.choked ? 'choked' : `not choked, ${say('pressure', atmosphere, 'psia')} behind it`}: at ${say('temperature', temperature)} nitrogen passes ${perForce(purge.flow / (coefficient * area * purge.endPressure))} of pressure times area`,
        `${coefficient} × ${say('area', area, 'in2')} × ${say('pressure', purge.endPressure, 'psia')} × that = ${say('mass-flow', purge.flow)}; at ${say('density', nitrogenMass(1))} of 70 °F and 1 atm = ${flow(free)}`,
        ...(free > regulator
          ? [`held to what the regulator passes, ${flow(regulator)} (${say('mass-flow', nitrogenMass(regulator))})`]
          : []),
      ],
    };
  },
});
