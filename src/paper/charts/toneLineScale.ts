import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { WorkSeries } from '../../records/workSeries.ts';

/** What of a series is drawn. */
export type DrawnSeries = Pick<WorkSeries, 'tolerance' | 'sigma' | 'answer' | 'pulls'>;

/** One scale for all tones, so that a rise looks as steep and a tolerance as high in each: only where it begins differs. */
export interface LineScale {
  /** Darkness at the foot of each tone's plot. */
  readonly from: Readonly<Record<SeriesTone, number>>;
  /** Darkness from foot to head, the same for all; above 0. */
  readonly span: number;
}

/** The least that is shown, in tolerances: the band and as much again on either side. */
const leastSpan = 4;

/** The scale that takes in every reading with its interval, σ and the tolerance about the latest, and a little air. */
export function lineScale({
  pulls,
  tolerance,
  sigma,
}: Pick<WorkSeries, 'pulls' | 'tolerance' | 'sigma'>): LineScale {
  const ranges = seriesTones.map((tone) => {
    const read = pulls.flatMap((pull) => pull.tones[tone] ?? []);
    if (read.length === 0) return [0.5, 0.5] as const;
    const latest = read.at(-1)!.value;
    const reach = sigma ?? 0;
    const low = Math.min(latest - tolerance, ...read.map((one) => Math.min(one.low, one.value - reach)));
    const high = Math.max(latest + tolerance, ...read.map((one) => Math.max(one.high, one.value + reach)));
    return [low, high] as const;
  });
  const widest = Math.max(...ranges.map(([low, high]) => high - low));
  const span = Math.max(leastSpan * tolerance, widest * 1.12);
  const [lights, middles, darks] = ranges.map(([low, high]) => (low + high) / 2 - span / 2);
  return { from: { lights: lights!, middles: middles!, darks: darks! }, span };
}

/** Round values for the axis, at most six of them and none beyond bare or full. */
export function tickValues(from: number, span: number): readonly number[] {
  const step = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5].find((each) => span / each <= 5) ?? 1;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor((from + span) / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    return Math.round((first + index) * step * 1000) / 1000;
  }).filter((value) => value >= 0 && value <= 1);
}
