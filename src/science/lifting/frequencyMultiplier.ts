/** How long lifting goes on in a day, without longer light work between: up to 1 h, up to 2 h, up to 8 h. */
export const liftingDurations = ['1h', '2h', '8h'] as const;
export type LiftingDuration = (typeof liftingDurations)[number];

/** Hands below 75 cm above the floor at the start of the lift, or at 75 cm and above. */
type HeightBand = 'low' | 'high';

const rates = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

/**
 * Table 5 of NIOSH 94-110 (1994, revised 2021), by lifts per minute as above. Read in copies typed by others: one cell, 0.15 at nine
 * lifts for up to 8 h from 75 cm, rests on a single one.
 */
const table: Readonly<Record<LiftingDuration, Readonly<Record<HeightBand, readonly number[]>>>> = {
  '1h': {
    low: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0, 0, 0],
    high: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0.34, 0.31, 0.28],
  },
  '2h': {
    low: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0, 0, 0, 0, 0],
    high: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0.23, 0.21, 0, 0, 0],
  },
  '8h': {
    low: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0, 0, 0, 0, 0, 0, 0],
    high: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13, 0, 0, 0, 0, 0],
  },
};

/**
 * How much less may be lifted the more often it is lifted, 0..1, by table 5; between its rows in a straight line, as the
 * manual does.
 * @param liftsPerMinute 0 or more; below 0.2 counts as 0.2, above 15 gives 0.
 * @param handsCm height of the hands above the floor where the lift starts.
 */
export function frequencyMultiplier(
  liftsPerMinute: number,
  duration: LiftingDuration,
  handsCm: number,
): number {
  if (!(liftsPerMinute >= 0)) return Number.NaN;
  const column = table[duration][handsCm < 75 ? 'low' : 'high'];
  const rate = Math.max(liftsPerMinute, rates[0]!);
  if (rate > rates.at(-1)!) return 0;
  const above = rates.findIndex((value) => value >= rate);
  if (above === 0) return column[0]!;
  const part = (rate - rates[above - 1]!) / (rates[above]! - rates[above - 1]!);
  return column[above - 1]! + part * (column[above]! - column[above - 1]!);
}
