import type { Host } from './host';

/** Milliseconds of work before anything is shown, and between two showings. */
const patience = 500;
const between = 100;

/** Shows on a terminal how far long work has come; says nothing elsewhere, and nothing of short work. */
export function progressOf(
  host: Host,
  what: string,
  of: number,
): { readonly step: () => void; readonly end: () => void } {
  let done = 0;
  let shown = false;
  let next = performance.now() + patience;
  return {
    step: () => {
      done += 1;
      if (!host.sayIsTerminal || performance.now() < next) return;
      next = performance.now() + between;
      shown = true;
      host.say(`\r${what} ${done} of ${of}`);
    },
    end: () => {
      // The line is wiped, so that what follows begins at its head.
      if (shown) host.say('\r\u001b[K');
    },
  };
}
