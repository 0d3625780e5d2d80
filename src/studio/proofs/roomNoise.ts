import type { RoomNoise } from '../../records/workSeries.ts';
import { readingNoise } from './readingNoise.ts';

/** With fewer differences than this the interval of σ spans more than a factor of three: our rule. */
const wellKnown = 6;

/**
 * σ of one reading in this room: from sheets that were read more than once, set up afresh each time; until there are
 * such, what was typed.
 * @param sheets readings by sheet, newest sheet first: one list per tone.
 */
export function roomNoise(
  sheets: readonly (readonly (readonly number[])[])[],
  kept: { readonly version: number; readonly typed: number | null },
): RoomNoise {
  const repeated = sheets.filter((lists) => lists.some(({ length }) => length > 1));
  const found = readingNoise(repeated.flat());
  const { typed, version } = kept;
  // two copies of one picture say nothing of how readings differ
  if (found && found.sigma > 0) {
    const { sigma, low, high, degreesOfFreedom } = found;
    const few = degreesOfFreedom < wellKnown;
    return {
      sigma: { value: sigma, low, high, basis: 'this room', warnings: [] },
      origin: 'repeats',
      sheets: repeated.length,
      degreesOfFreedom,
      typed,
      version,
      ask: few ? 'It rests on few repeats: photograph another sheet twice, set up afresh.' : null,
    };
  }
  const ask = 'Photograph one sheet twice, taken away and set up afresh in between: this is asked for once.';
  const none = { sheets: 0, degreesOfFreedom: 0, typed, version };
  if (typed === null) return { ...none, sigma: null, origin: 'unknown', ask };
  // what is typed carries no interval of its own: half to twice is our rule
  const sigma = { value: typed, low: typed / 2, high: typed * 2, basis: 'typed', warnings: [] } as const;
  return { ...none, sigma, origin: 'typed', ask };
}
