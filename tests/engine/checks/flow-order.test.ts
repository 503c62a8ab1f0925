import { describe, expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

const told = (plan: string, ...swaps: readonly Swap[]): readonly string[] =>
  foundIn(plan, swaps).map(({ name }) => name);

// Compressor, condenser, receiver, metering device, evaporator, accumulator: the circuit of the trade (handbook 13.0).
describe('flow order', () => {
  it.each([
    // A circuit that nobody touches.
    [
      'mill-hall-east.jobplan',
      '    comp-w: compressor kept\n    condenser-w: condenser kept\n',
      '    condenser-w: condenser kept\n    comp-w: compressor kept\n',
    ],
    // What is taken away.
    [
      'machine-given-up.jobplan',
      '    compressor removed\n    condenser removed\n',
      '    condenser removed\n    compressor removed\n',
    ],
    // Behind a way past the valve.
    [
      'hot-gas-case.jobplan',
      '    evaporator kept {\n      rated 250 psig\n    }\n    suction-line kept {\n      tube 7/8 in ACR\n      length 30 ft\n    }\n',
      '    suction-line kept {\n      tube 7/8 in ACR\n      length 30 ft\n    }\n    evaporator kept {\n      rated 250 psig\n    }\n',
    ],
    // An accumulator before the coil.
    [
      'trailer-condenser-renewed.jobplan',
      '    evaporator kept\n    accumulator kept\n',
      '    accumulator kept\n    evaporator kept\n',
    ],
    // A reversing valve that hot gas never goes through.
    [
      'dry-lines-heat-pump.jobplan',
      '      compressor new\n      reversing-valve new\n',
      '      reversing-valve new\n      compressor new\n',
    ],
    // Both valves of one compressor on one side.
    [
      'double-riser-flushed.jobplan',
      '    stop-in: service-valve kept\n    compressor kept {\n      oil 3 qt POE\n    }\n',
      '    compressor kept {\n      oil 3 qt POE\n    }\n    stop-in: service-valve kept\n',
    ],
  ] as const)('%s', (plan, from, by) => {
    expect(told(plan, [from, by])).toEqual(['circuit-out-of-order']);
  });

  it('says once that the vessel lies behind what is shut', () => {
    const receiver = '    receiver kept\n';
    const king = '    king-valve: service-valve kept\n';
    expect(told('burnout-cores-three-visits.jobplan', [receiver + king, king + receiver])).toEqual([
      'pump-down-in-vain',
    ]);
  });
});
