/** Says in the server's log what went wrong, and where. */
export type Log = (where: string, error: unknown) => void;

/** Runs work in the next turn of the event loop, after messages that have already come in. */
export function later(work: () => void): void {
  if (typeof setImmediate === 'function') setImmediate(work);
  else setTimeout(work, 0);
}

/** The same function, but an error in it is logged and answered with `otherwise`: no request takes the server down. */
export function guarded<Parameters extends unknown[], Answer>(
  log: Log,
  where: string,
  otherwise: Answer,
  work: (...parameters: Parameters) => Answer | Promise<Answer>,
): (...parameters: Parameters) => Promise<Answer> | Answer {
  return (...parameters) => {
    try {
      const answer = work(...parameters);
      if (!(answer instanceof Promise)) return answer;
      return answer.catch((error: unknown) => {
        log(where, error);
        return otherwise;
      });
    } catch (error) {
      log(where, error);
      return otherwise;
    }
  };
}
