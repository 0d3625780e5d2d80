import type { Services } from '../../../application/openServices.ts';

/** The clock and the counter that a told year runs by: the same year has the same times and the same ids. */
export interface YearClock {
  readonly now: () => Date;
  readonly newId: () => string;
  /** Sets the clock; it never goes back. */
  at(moment: number): void;
}

/** The services with the clock of the year in place of the machine's. */
export type YearParts = Services & { readonly sample: true; readonly clock: YearClock };

/**
 * A clock that stands until it is set.
 * @param name begins every id, so that two years in one folder don't share any
 */
export function yearClock(name: string, start: number): YearClock {
  let moment = start;
  let count = 0;
  return {
    now: () => new Date(moment),
    newId: () => `${name}-${++count}`,
    at(next) {
      if (next < moment)
        throw new Error(`The clock of the year would go back to ${new Date(next).toISOString()}`);
      moment = next;
    },
  };
}

/** The services as a year is written through them. */
export function yearParts(services: Services, clock: YearClock): YearParts {
  return { ...services, now: clock.now, newId: clock.newId, sample: true, clock };
}

/** Minutes and days in ms. */
export const minuteMs = 60_000;
export const dayMs = 86_400_000;
