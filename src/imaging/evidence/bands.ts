import type { FeatureReading } from '../../records/suspects.ts';
import { cellMm } from './evidenceGrid.ts';
import { profile } from './profiles.ts';
import { cellsOf, type PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

const shortestMm = 10;

/**
 * Bands across the travel. `bandsRepeat`: half the height of a wave that comes again at an even distance, with its period;
 * `bandOnce`: the plainest single band. A wave that explains the profile leaves little for a single band, and the other way round.
 * @param lapMm π × the roller's diameter; null: unknown.
 */
export function bands(
  { grid, left }: PulledTone,
  lapMm: number | null,
): { bandsRepeat: FeatureReading | null; bandOnce: FeatureReading | null } {
  const { values, whole, deviation } = profile(grid, left, 'rows', cellsOf(30));
  if (!Number.isFinite(deviation)) return { bandsRepeat: null, bandOnce: null };
  const wave = bestWave(whole);
  const size = wave.amplitude * Math.min(1, Math.max(0, (wave.explained - 0.15) / 0.35));
  const atLap = lapMm !== null && Math.abs(wave.periodMm - lapMm) < 0.07 * lapMm;
  const period = `every ${Math.round(wave.periodMm)} mm${atLap ? ', the lap of the roller' : ''}`;
  const quiet = deviation / Math.sqrt(values.length / 6);
  let most = 0;
  for (let line = 0; line < values.length; line++)
    if (Math.abs(values[line]!) > Math.abs(values[most]! || 0)) most = line;
  const once = Math.max(0, Math.abs(values[most]! || 0) - 2.5 * deviation) * (1 - wave.explained);
  const where = `${values[most]! < 0 ? 'paler' : 'darker'}, ${Math.round((most + 0.5) * cellMm)} mm from the start of the travel`;
  return {
    bandsRepeat: reading(Math.max(0, size - 2 * quiet), quiet, period),
    bandOnce: reading(once, Math.min(deviation, 0.05), where),
  };
}

/** The wave of a length between 10 mm and a third of the stone that explains most of the profile. */
function bestWave(values: Float64Array): { periodMm: number; amplitude: number; explained: number } {
  let total = 0;
  for (const value of values) if (!Number.isNaN(value)) total += value * value;
  let best = { periodMm: shortestMm, amplitude: 0, explained: 0 };
  const longest = (values.length * cellMm) / 2.5;
  for (let periodMm = shortestMm; periodMm <= longest; periodMm *= 1.02) {
    let [c, s, cc, ss, cs] = [0, 0, 0, 0, 0];
    for (let line = 0; line < values.length; line++) {
      const value = values[line]!;
      if (Number.isNaN(value)) continue;
      const turn = (2 * Math.PI * line * cellMm) / periodMm;
      const [x, y] = [Math.cos(turn), Math.sin(turn)];
      c += value * x;
      s += value * y;
      cc += x * x;
      ss += y * y;
      cs += x * y;
    }
    const determinant = cc * ss - cs * cs;
    if (determinant < 1e-6) continue;
    const a = (c * ss - s * cs) / determinant;
    const b = (s * cc - c * cs) / determinant;
    const explained = total === 0 ? 0 : (a * c + b * s) / total;
    if (explained > best.explained) best = { periodMm, amplitude: Math.hypot(a, b), explained };
  }
  return best;
}
