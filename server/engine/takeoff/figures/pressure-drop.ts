import { frictionFactor } from '../../properties/friction';
import { copperRoughness } from '../../reference/velocity-limits';
import { relation } from '../relation';

/** Pressure drop of a flow in a line, Pa. */
export const pressureDrop = relation({
  name: 'pressure-drop',
  title: 'Pressure drop of a line',
  group: 13,
  inputs: {
    flow: { kind: 'mass-flow', title: 'refrigerant flow', from: '`capacity` of the system or the line' },
    density: {
      kind: 'density',
      title: 'density',
      from: '`refrigerant` and temperatures of the system',
      valid: [1e-3, 3000],
    },
    viscosity: {
      kind: 'viscosity',
      title: 'viscosity',
      from: '`refrigerant` and temperatures of the system',
      valid: [1e-7, 10],
    },
    bore: { kind: 'length', as: 'in', title: 'bore', from: '`tube` of the line', valid: [0.5e-3, 0.3] },
    length: { kind: 'length', title: 'equivalent length', from: '`length` and `elbows` of the line', valid: [0, 5000] },
    roughness: {
      kind: 'length',
      as: 'mm',
      title: 'roughness',
      from: 'nothing in the plan',
      default: copperRoughness,
      valid: [0, 1e-3],
    },
  },
  output: 'pressure-difference',
  formula:
    'Δp = f (L/D) ρ v²/2; f = 8 ((8/Re)¹² + (A + B)^-1.5)^(1/12) with A = (2.457 ln(1/((7/Re)^0.9 + 0.27 ε/D)))¹⁶, B = (37530/Re)¹⁶ (Churchill 1977); Re = ρ v D/µ',
  validity: 'one phase; the density hardly changes along the line',
  sources: ['Darcy and Weisbach; friction factor: Churchill 1977'],
  confidence: 'computed',
  assumptions: ['no oil film on the wall', 'smooth drawn tube'],
  examples: [
    {
      inputs: {
        flow: '8.32 lb/min',
        density: '1.477 lb/ft3',
        viscosity: '0.0121 cP',
        bore: '0.785 in',
        length: '100 ft',
        roughness: '0.0015 mm',
      },
      expect: '2.85 psi',
      tolerance: 5e-3,
      source: 'handbook section 12, WE-28',
    },
    {
      inputs: { flow: '1 g/s', density: '1000 kg/m3', viscosity: '1 cP', bore: '10 mm', length: '1 m' },
      expect: '4.07 Pa',
      tolerance: 2e-3,
      source: 'law of Hagen and Poiseuille: 128 µ L V / (π D⁴) = 4.074 Pa at Re 127',
    },
  ],
  compute: ({ flow, density, viscosity, bore, length, roughness }, { say, system }) => {
    const area = (Math.PI / 4) * bore ** 2;
    const velocity = flow / (density * area);
    const reynolds = (density * velocity * bore) / viscosity;
    const factor = frictionFactor(reynolds, bore, roughness);
    const value = (factor * (length / bore) * density * velocity ** 2) / 2;
    return {
      value,
      workings: () => [
        `velocity = ${say('velocity', velocity, 'ft/min')}, Re = ${Math.round(reynolds)}, f = ${factor.toFixed(5)}`,
        `ρ v²/2 = ${say('density', density)} × (${say('velocity', velocity, 'ft/s')})² / ${system === 'si' ? '2' : '9,266 (to psi)'} = ${say('pressure-difference', (density * velocity ** 2) / 2)}`,
        `${factor.toFixed(5)} × ${say('length', length, 'ft')} / ${say('length', bore, 'ft')} × ${say('pressure-difference', (density * velocity ** 2) / 2)} = ${say('pressure-difference', value)}`,
      ],
    };
  },
});
