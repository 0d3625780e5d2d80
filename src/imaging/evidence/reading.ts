import type { FeatureReading } from '../../records/suspects.ts';

/** A feature's reading, rounded to what a record keeps. */
export function reading(value: number, deviation: number, note: string | null = null): FeatureReading | null {
  if (!Number.isFinite(value)) return null;
  const round = (number: number) => Math.round(number * 1e4) / 1e4;
  return {
    value: round(value),
    deviation: round(Number.isFinite(deviation) ? deviation : Math.abs(value) + 1),
    note,
  };
}
