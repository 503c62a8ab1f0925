import { type Caution, when } from './caution';

/** Electricity, and machines that start. 29 CFR 1910.147 (lock-out). */
export const powering: readonly Caution[] = [
  (here) =>
    when(
      here.step.word.word === 'lock-out',
      'Shock. Capacitors stay charged: discharge them, then measure. A control may start the machine by itself.',
    ),
  (here) =>
    when(
      here.events('powers').some((event) => event.to === 'controls'),
      'Live parts at the controls: covers on. The compressor’s own switch stays locked.',
    ),
  (here) =>
    when(
      here.events('powers').some((event) => event.to === 'on'),
      'Machines can start at once: covers on, hands and tools clear of fans and belts.',
    ),
  (here) => {
    const starts = here.events('starts')[0];
    return when(
      starts !== undefined && !here.before.running,
      'First start: suction and discharge valves open, gauges on, nobody at the terminals. Stop at once if pressure, current or sound is wrong.',
    );
  },
];
