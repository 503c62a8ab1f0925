import { standardPressure } from '../../properties';
import { oxygenInAir, oxygenLeast } from '../../reference/nitrogen-practice';
import { relation } from '../relation';

/** Oxygen left in the air of a room into which gas was let, as a share by volume. */
export const oxygenLeft = relation({
  name: 'oxygen-left',
  title: 'Oxygen left in the room',
  group: 7,
  inputs: {
    room: {
      kind: 'volume',
      as: 'ft3',
      title: 'volume of the room',
      from: '`work-space` of the site',
      valid: [0.1, 1e7],
    },
    released: { kind: 'volume', as: 'scf', title: 'gas let go', from: 'the steps that let gas go in the room' },
    ventilation: {
      kind: 'volume-flow',
      as: 'cfm',
      title: 'ventilation',
      from: '`ventilation` of the work space',
      optional: true,
    },
    time: {
      kind: 'time',
      title: 'time over which it is let go',
      from: '`for` in the step',
      optional: true,
      valid: [1, 1e7],
    },
    before: {
      kind: 'share',
      title: 'oxygen before the step',
      from: 'the steps before, which let gas go in the room',
      optional: true,
      valid: [0, 1],
    },
  },
  output: 'share',
  formula:
    'without ventilation O₂ before × e^(-v/V), v as the gas spreads in the site’s air; with it C + (O₂ before - C) × e^(-(Qv + Q) t/V), C = 20.95 % × Qv/(Qv + Q); O₂ before is 20.95 % where no step before let gas go',
  validity: 'gas that mixes with the room’s air',
  sources: ['mass balance of a well-mixed room', oxygenLeast.source],
  confidence: 'computed',
  assumptions: [
    'gas and room at 70 °F; well mixed; near the outlet, and low down with heavy gas, there is less oxygen',
  ],
  examples: [
    {
      inputs: { room: '1000 ft3', released: '80 scf' },
      expect: '19.34 %',
      tolerance: 5e-4,
      source: 'handbook section 12, WE-40',
    },
    {
      inputs: { room: '1000 ft3', released: '71.7 scf' },
      expect: '19.5 %',
      tolerance: 3e-4,
      source: 'handbook 6.4: the limit of an unventilated room',
    },
    { inputs: { room: '3000 ft3', released: '300 scf' }, expect: '19.0 %', tolerance: 3e-3, source: 'handbook 6.4' },
    {
      inputs: { room: '1000 ft3', released: '0 scf' },
      expect: '20.95 %',
      tolerance: 1e-9,
      source: 'limit: nothing let go',
    },
    {
      inputs: { room: '1000 ft3', released: '40 scf', before: '20.129 %' },
      expect: '19.34 %',
      tolerance: 5e-4,
      source: 'closed form: 40 scf twice leave what 80 scf leave at once (handbook WE-40)',
    },
    {
      inputs: { room: '100 ft3', released: '6000 scf', ventilation: '100 cfm', time: '60 min' },
      expect: '10.475 %',
      tolerance: 1e-3,
      source: 'limit: steady state of equal flows',
    },
  ],
  compute: ({ room, released, ventilation, time, before = oxygenInAir.quantity.low }, { say, atmosphere }) => {
    const fresh = oxygenInAir.quantity.low;
    const share = (value: number): string => say('share', value);
    // A standard cubic foot takes the more room, the thinner the air of the site.
    const spread = released * (standardPressure / atmosphere);
    const spreading =
      Math.abs(spread / released - 1) > 0.005
        ? [
            `${say('volume', released, 'scf')} at ${say('pressure', standardPressure, 'psia')} fill ${say('volume', spread, 'ft3')} at the site's ${say('pressure', atmosphere, 'psia')}`,
          ]
        : [];
    const gone = say('volume', spread, spreading.length > 0 ? 'ft3' : 'scf');
    if (ventilation !== undefined && ventilation > 0 && time !== undefined) {
      const flow = spread / time;
      const steady = (fresh * ventilation) / (ventilation + flow);
      const value = steady + (before - steady) * Math.exp((-(ventilation + flow) * time) / room);
      return {
        value,
        workings: () => [
          ...spreading,
          `flow of gas = ${gone} / ${say('time', time)} = ${say('volume-flow', flow)}`,
          `steady state = ${share(fresh)} × ${say('volume-flow', ventilation)} / (${say('volume-flow', ventilation)} + ${say('volume-flow', flow)}) = ${share(steady)}`,
          `after ${say('time', time)} = ${share(value)}`,
        ],
      };
    }
    const value = before * Math.exp(-spread / room);
    const pushedOut = before * Math.max(0, 1 - spread / room);
    return {
      value,
      notes: [`If the gas pushes the air out before it mixes, ${share(pushedOut)} are left.`],
      workings: () => [
        ...spreading,
        `${share(before)} × e^(-${gone} / ${say('volume', room, 'ft3')}) = ${share(value)}`,
      ],
    };
  },
});
