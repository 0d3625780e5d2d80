import type { FeatureReading } from '../../records/suspects.ts';
import { median, medianAbsoluteDeviation } from '../../science/statistics/quantile.ts';
import { clearOfMarks } from './bareGround.ts';
import { cellMm } from './evidenceGrid.ts';
import type { PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

const nearestMm = 20;
/** The border may be grey for reasons of its own. */
const borderCells = 6;

/**
 * The drawing come again further along the travel, as a dirty roller leaves it: as a share of its own strength, and how far
 * on. Every distance is held against all others, as a drawing resembles itself.
 * @param lapMm π × the roller's diameter; null: unknown.
 */
export function ghostRepeat({ grid, expected }: PulledTone, lapMm: number | null): FeatureReading | null {
  const from = Math.round(nearestMm / cellMm);
  const to = Math.round(grid.rows * 0.6);
  // Only on bare stone is ink beyond doubt too much.
  const clear = clearOfMarks(grid, 0);
  const found: { lag: number; share: number; sure: number }[] = [];
  for (let lag = from; lag <= to; lag++)
    for (const way of [lag, -lag]) {
      const share = shareAt(grid, expected.cells, clear, way);
      if (!Number.isNaN(share.share)) found.push({ lag: way, ...share });
    }
  if (found.length < 12) return null;
  const shares = found.map(({ share }) => share);
  const deviation = Math.max(0.004, medianAbsoluteDeviation(shares));
  const best = found.reduce((most, one) => (one.sure > most.sure ? one : most));
  const mm = Math.abs(best.lag) * cellMm;
  const lap = lapMm !== null && Math.abs(mm - lapMm) < 0.06 * lapMm ? ', the lap of the roller' : '';
  return reading(
    Math.max(0, best.share - median(shares) - 2 * deviation),
    deviation,
    `${mm} mm along the travel${lap}`,
  );
}

/** Slope of what bare stone prints on the drawing so many rows away, and how surely they go together. */
function shareAt(
  grid: PulledTone['grid'],
  tones: Float32Array,
  clear: Uint8Array,
  lag: number,
): { share: number; sure: number } {
  const shift = lag * grid.columns;
  let [n, x, y, xx, xy, yy] = [0, 0, 0, 0, 0, 0];
  for (let cell = Math.max(0, shift); cell < Math.min(tones.length, tones.length + shift); cell++) {
    const [column, row] = [cell % grid.columns, Math.floor(cell / grid.columns)];
    if (Math.min(column, row, grid.columns - 1 - column, grid.rows - 1 - row) < borderCells) continue;
    const tone = tones[cell]!;
    if (!clear[cell]) continue;
    const moved = grid.drawn[cell - shift]! * (1 - tone);
    const more = grid.printed[cell]! - tone;
    if (Number.isNaN(moved * more)) continue;
    n++;
    x += moved;
    y += more;
    xx += moved * moved;
    xy += moved * more;
    yy += more * more;
  }
  const spread = xx - (x * x) / n;
  const together = xy - (x * y) / n;
  if (n < 60 || spread < 1) return { share: Number.NaN, sure: 0 };
  return {
    share: together / spread,
    sure: (together / Math.sqrt(spread * Math.max(1e-9, yy - (y * y) / n))) * Math.sqrt(n),
  };
}
