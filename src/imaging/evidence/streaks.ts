import type { FeatureReading } from '../../records/suspects.ts';
import { cellMm } from './evidenceGrid.ts';
import { profile } from './profiles.ts';
import { cellsOf, type PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

/** A streak is a line against its surroundings of so many mm to either side. */
const surroundingsMm = 14;

/**
 * The plainest narrow line along the travel: by which share it is paler or darker than its surroundings, over the whole length.
 * `streakDarker`: the same where it is darker.
 * What the largest of many lines would show by chance (2.5 deviations) is taken off.
 */
export function streakAlong({ grid, left }: PulledTone): {
  readonly streakAlong: FeatureReading | null;
  readonly streakDarker: FeatureReading | null;
} {
  const { values, deviation } = profile(grid, left, 'columns', cellsOf(surroundingsMm));
  if (!Number.isFinite(deviation)) return { streakAlong: null, streakDarker: null };
  let most = 0;
  for (let line = 1; line < values.length; line++)
    if (Math.abs(values[line]!) > Math.abs(values[most]! || 0)) most = line;
  const size = Math.abs(values[most]! || 0);
  const note = `${values[most]! < 0 ? 'paler' : 'darker'}, ${Math.round((most + 0.5) * cellMm)} mm from the left as it travels`;
  const beyond = Math.max(0, size - 2.5 * deviation);
  return {
    streakAlong: reading(beyond, deviation, note),
    streakDarker: reading(values[most]! > 0 ? beyond : 0, deviation),
  };
}
