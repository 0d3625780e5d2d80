import { studentQuantile } from '../../src/science/statistics/distributions.ts';

/** How a figure went on over a stretch of time. */
export interface Growth {
  /** By the hour, with its 95 % interval. */
  readonly perHour: number;
  readonly low: number;
  readonly high: number;
}

/** Neighbouring samples tell much the same: their means over so many spans of equal length are taken as independent. */
const spans = 10;

/**
 * The slope of a figure over the last half of a watch: least squares through the means of ten spans, with Student's interval.
 * @param samples in order of time; null where fewer than two lie in each span
 */
export function growthOf(
  samples: readonly { readonly minutes: number; readonly value: number }[],
): Growth | null {
  const last = samples.slice(Math.floor(samples.length / 2));
  const each = Math.floor(last.length / spans);
  if (each < 2) return null;
  const points = Array.from({ length: spans }, (_, span) => {
    const within = last.slice(span * each, (span + 1) * each);
    const mean = (of: (one: (typeof within)[number]) => number) =>
      within.reduce((sum, one) => sum + of(one), 0) / each;
    return { x: mean(({ minutes }) => minutes / 60), y: mean(({ value }) => value) };
  });
  const middle = (of: 'x' | 'y') => points.reduce((sum, point) => sum + point[of], 0) / spans;
  const [x, y] = [middle('x'), middle('y')];
  const spread = points.reduce((sum, point) => sum + (point.x - x) ** 2, 0);
  const perHour = points.reduce((sum, point) => sum + (point.x - x) * (point.y - y), 0) / spread;
  const left = points.reduce((sum, point) => sum + (point.y - y - perHour * (point.x - x)) ** 2, 0);
  const arm = studentQuantile(0.975, spans - 2) * Math.sqrt(left / (spans - 2) / spread);
  return { perHour, low: perHour - arm, high: perHour + arm };
}
