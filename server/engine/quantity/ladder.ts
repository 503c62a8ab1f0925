import type { Kind } from './quantity';

/** A unit and the size in SI below which it is the one to read; the last rung has no end. */
export type Rung = readonly [unit: string, below: number];

const end = Number.POSITIVE_INFINITY;
const only = (unit: string): readonly Rung[] => [[unit, end]];
const time: readonly Rung[] = [
  ['s', 120],
  ['min', 7200],
  ['h', 172800],
  ['days', end],
];
const share: readonly Rung[] = [
  ['ppm', 1e-4],
  ['%', end],
];
const both = (rungs: readonly Rung[]) => ({ 'inch-pound': rungs, si: rungs });
const litres: readonly Rung[] = [
  ['mL', 0.001],
  ['L', 1],
  ['m3', end],
];
const litresPerMinute: readonly Rung[] = [
  ['mL/min', 1e-3 / 60],
  ['L/min', 0.1 / 6],
  ['m3/h', end],
];

/** For each kind the units from small to large; pressure levels choose by what gauge reads them, in `show`. */
export const rungs: Readonly<
  Record<Exclude<Kind, 'pressure' | 'count'>, Readonly<Record<'inch-pound' | 'si', readonly Rung[]>>>
> = {
  length: {
    'inch-pound': [
      ['in', 0.3048],
      ['ft', end],
    ],
    si: [
      ['mm', 1],
      ['m', end],
    ],
  },
  altitude: { 'inch-pound': only('ft'), si: only('m') },
  area: {
    'inch-pound': [
      ['in2', 0.09290304],
      ['ft2', end],
    ],
    si: [
      ['cm2', 0.1],
      ['m2', end],
    ],
  },
  volume: {
    'inch-pound': [
      ['fl-oz', 0.003785411784],
      ['gal', 0.3785411784],
      ['ft3', end],
    ],
    si: litres,
  },
  mass: {
    'inch-pound': [
      ['oz', 0.45359237],
      ['lb', end],
    ],
    si: [
      ['g', 1],
      ['kg', end],
    ],
  },
  time: both(time),
  temperature: { 'inch-pound': only('degF'), si: only('degC') },
  'temperature-difference': { 'inch-pound': only('Δ°F'), si: only('Δ°C') },
  'pressure-difference': {
    'inch-pound': [
      ['micron', 140],
      ['psi', end],
    ],
    si: [
      ['Pa', 1000],
      ['kPa', 1e7],
      ['MPa', end],
    ],
  },
  'volume-flow': {
    'inch-pound': [
      ['cfh', 1 / 2118.88],
      ['cfm', end],
    ],
    si: litresPerMinute,
  },
  'mass-flow': {
    'inch-pound': only('lb/min'),
    si: [
      ['g/s', 1],
      ['kg/s', end],
    ],
  },
  velocity: { 'inch-pound': only('ft/min'), si: only('m/s') },
  density: { 'inch-pound': only('lb/ft3'), si: only('kg/m3') },
  'mass-per-length': {
    'inch-pound': [
      ['oz/ft', 1.488164],
      ['lb/ft', end],
    ],
    si: [
      ['g/m', 1],
      ['kg/m', end],
    ],
  },
  power: {
    'inch-pound': only('Btu/h'),
    si: [
      ['W', 1000],
      ['kW', end],
    ],
  },
  energy: {
    'inch-pound': [
      ['ft-lbf', 1e5],
      ['Btu', end],
    ],
    si: [
      ['J', 1000],
      ['kJ', end],
    ],
  },
  share: both(share),
  'acid-number': both(only('mgKOH/g')),
  torque: {
    'inch-pound': [
      ['in-lb', 13.55],
      ['ft-lb', end],
    ],
    si: only('N·m'),
  },
  viscosity: both(only('cP')),
  enthalpy: { 'inch-pound': only('Btu/lb'), si: only('kJ/kg') },
  conductance: { 'inch-pound': only('cfm'), si: only('L/s') },
  'charge-per-volume': { 'inch-pound': only('lb/Mcf'), si: only('g/m3') },
};

/** The SI figure that stands in brackets behind a unit, where the ladder of its kind would name another. */
export const twins: Readonly<Record<string, readonly Rung[]>> = {
  psig: [
    ['kPa gauge', 1e7],
    ['MPa gauge', end],
  ],
  psia: only('kPa absolute'),
  inHg: only('kPa vacuum'),
  micron: only('Pa absolute'),
  torr: only('Pa absolute'),
  ft3: [
    ['L', 0.1],
    ['m3', end],
  ],
  scf: [
    ['L', 0.1],
    ['m3', end],
  ],
  'lb/gal': only('kg/L'),
};
