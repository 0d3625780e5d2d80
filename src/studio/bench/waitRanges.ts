import type { WaitRange, WaitVerdict } from '../../records/bench.ts';
import type { LineStage } from '../../records/run.ts';

const minute = 60;
const hour = 3600;
const day = 24 * hour;

/** The rest after an acid etch is shorter. */
export type EtchRoute = 'tannic' | 'acid' | 'unknown';

const practice = (
  openFrom: number,
  best: readonly [number, number] | null,
  note: string,
  beyond: { readonly pastFrom?: number; readonly unknownFrom?: number } = {},
): WaitRange => ({
  openFrom,
  bestFrom: best?.[0] ?? null,
  bestTo: best?.[1] ?? null,
  pastFrom: beyond.pastFrom ?? null,
  unknownFrom: beyond.unknownFrom ?? null,
  basis: 'common practice',
  note,
});

const overnight = practice(
  8 * hour,
  [8 * hour, day],
  'overnight, read as 8 to 24 h; longer is no harm known',
);
const afterAcid = practice(hour, null, 'an hour at least after acid; no longest time is known');
const underBase = practice(
  5 * minute,
  [12 * hour, 36 * hour],
  'about the next day; days to weeks under whole gum, unknown beyond three weeks',
  { unknownFrom: 21 * day },
);
const waterFilm: WaitRange = {
  ...practice(0, [0, 20], 'a film of water lives 20–60 s', { pastFrom: minute }),
  basis: 'memory',
};
const inkedOpen = practice(0, null, 'gum whenever pausing over 15 min', { pastFrom: 15 * minute });
const afterFullSecond = practice(12 * hour, [12 * hour, day], 'rests 12 to 24 h; no longest time is known');
const afterQuickSecond = practice(5 * minute, null, 'about 5 min; no longest time is known');

/**
 * How long a stone may and should wait after a stage, from its end; null where practice knows no time.
 * @param gummed whether it lies under gum now: the pause of an inked stone is bounded only without
 */
export function waitRange(stage: LineStage, route: EtchRoute, gummed: boolean): WaitRange | null {
  switch (stage) {
    case 'first-etch':
      return route === 'acid' ? afterAcid : overnight;
    case 'base':
    case 'second-base':
      return underBase;
    case 'water':
    case 'second-water':
      return gummed ? null : waterFilm;
    case 'roll-up':
    case 'second-roll-up':
    case 'trial-proofs':
    case 'second-powder':
    case 'proofs':
    case 'good-to-print':
    case 'edition':
      return gummed ? null : inkedOpen;
    case 'second-etch':
      return afterFullSecond;
    case 'second-etch-quick':
      return afterQuickSecond;
    default:
      return null;
  }
}

/** What a wait of so many seconds is; without a range it is open, since no time is known that would close it. */
export function waitVerdict(range: WaitRange | null, seconds: number | null): WaitVerdict {
  if (range === null) return 'open';
  if (seconds === null) return 'unknown';
  if (seconds < range.openFrom) return 'too-soon';
  if (range.pastFrom !== null && seconds >= range.pastFrom) return 'past-best';
  if (range.unknownFrom !== null && seconds >= range.unknownFrom) return 'unknown';
  const { bestFrom, bestTo } = range;
  if (bestFrom !== null && bestTo !== null && seconds >= bestFrom && seconds <= bestTo) return 'best';
  return 'open';
}
