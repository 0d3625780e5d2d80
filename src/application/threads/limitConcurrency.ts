/**
 * Lets at most `limit` jobs run at once; the others wait their turn in order.
 *
 * @returns a function that runs a job as soon as there is room, and settles as the job does
 */
export function limitConcurrency(limit: number): <T>(job: () => Promise<T>) => Promise<T> {
  const waiting: (() => void)[] = [];
  let running = 0;
  return async (job) => {
    if (running >= limit) await new Promise<void>((resolve) => waiting.push(resolve));
    else running += 1;
    try {
      return await job();
    } finally {
      // the place is handed on, not given back, so that nobody can slip in between
      const next = waiting.shift();
      if (next) next();
      else running -= 1;
    }
  };
}
