import { describe, expect, it } from 'vitest';
import { holding, lastEvent, named, walked } from './small';

/** Two solenoids in a row shut a stretch of the liquid line off that has no port: neither a machine nor a pump finds one there. */
const circuit = `compressor kept
condenser kept
first: solenoid kept
stretch: liquid-line kept
last: solenoid kept
expansion-valve kept
evaporator kept
suction-line kept`;

// The body of a shut valve hangs with its inlet; so `stretch` and `last` stand shut in between (README of the states).
const shutIn = ['stretch', 'last'];

describe('recovery of a stretch without a port (semantics: two shut valves make a section of its own)', () => {
  it.each([
    ['the system, valves shut', 'recover system to 4 inHg', shutIn],
    ['a list with a part that has a port', 'recover condenser, stretch to 4 inHg', shutIn],
    ['the stretch by its name: it is reached somehow', 'recover stretch to 4 inHg', []],
    ['the parts that have a port, and no more', 'recover condenser, compressor to 4 inHg', null],
  ])('%s', (_, step, missed) => {
    const entries = walked(circuit, ['lock-out power', step]);
    const event = lastEvent(entries, 'recovers')!;
    const { before, after } = entries.at(-1)!;
    expect(named(before, event.missed)).toEqual(missed === null || missed.length === 0 ? [] : [missed.join('+')]);
    // What is missed keeps its liquid.
    const stillFull = after.graph.parts
      .filter(({ index }) => after.parts[index]!.contents.some(({ liquid }) => liquid))
      .map(({ name }) => name);
    for (const part of shutIn) expect(stillFull.includes(part), part).toBe(missed === null || missed.length > 0);
  });

  it('reaches it where one valve is held open', () => {
    const entries = walked(circuit, ['lock-out power', 'open first by magnet', 'recover system to 4 inHg']);
    expect(lastEvent(entries, 'recovers')!.missed.map(({ parts }) => parts.length)).not.toContain(2);
    expect(entries.at(-1)!.after.parts[3]!.contents[0]!.liquid).toBe(false);
  });
});

/** Everything open, recovered and taken apart at the stretch, then joined again with the solenoids shut. */
const opened = [
  'lock-out power',
  'open first, last by magnet',
  'recover system to 4 inHg',
  'prove-zero system',
  'disconnect stretch at both ends',
  'connect stretch at both ends',
];

describe('evacuation of a stretch without a port', () => {
  it.each([
    ['the system, valves shut', ['return first, last to control', 'evacuate system to 500 micron'], ['stretch+last']],
    [
      'a list with a part that has a port',
      ['return first, last to control', 'evacuate condenser, stretch to 500 micron'],
      ['stretch+last'],
    ],
    [
      'each open part, of which one has a port',
      ['return first, last to control', 'evacuate each open part to 500 micron'],
      ['stretch+last'],
    ],
    ['the stretch by its name', ['return first, last to control', 'evacuate stretch to 500 micron'], []],
    ['the system, valves held open', ['evacuate system to 500 micron'], []],
  ])('%s', (_, steps, missed) => {
    const entries = walked(circuit, [...opened, ...steps]);
    const event = lastEvent(entries, 'evacuates')!;
    const { before, after } = entries.at(-1)!;
    expect(named(before, event.missed)).toEqual(missed);
    for (const part of shutIn) expect(holding(after, 'vacuum').includes(part), part).toBe(missed.length === 0);
  });
});
