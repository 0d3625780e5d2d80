import type { FeatureReading } from '../../records/suspects.ts';
import { median, medianAbsoluteDeviation } from '../../science/statistics/quantile.ts';
import { clearOfMarks } from './bareGround.ts';
import { cellMm } from './evidenceGrid.ts';
import type { PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

const nearestMm = 20;
/** The border may be grey for reasons of its own. */
const borderCells = 6;

/** A ghost so faint, as a share of the drawing, is not asked what it explains. */
const faintest = 0.02;

/**
 * The drawing come again further along the travel, as a dirty roller leaves it. `ghostRepeat`: as a share of its own strength, and how
 * far on; every distance is held against all others, as a drawing resembles itself. `ghostExplains`: which share of the unevenness of
 * bare stone it explains (the squared correlation): nearly all of what a roller carried round, little of shapes that only happen to
 * resemble the drawing.
 * @param lapMm π × the roller's diameter; null: unknown.
 */
export function ghostRepeat(
  tone: PulledTone,
  lapMm: number | null,
): { readonly ghostRepeat: FeatureReading | null; readonly ghostExplains: FeatureReading | null } {
  const { grid } = tone;
  const bare = bareCells(tone);
  const from = Math.round(nearestMm / cellMm);
  const to = Math.round(grid.rows * 0.6);
  const found: ({ lag: number } & Shift)[] = [];
  for (let lag = from; lag <= to; lag++)
    for (const way of [lag, -lag]) {
      const share = shareAt(grid.drawn, bare, way * grid.columns);
      if (!Number.isNaN(share.share)) found.push({ lag: way, ...share });
    }
  if (found.length < 12) return { ghostRepeat: null, ghostExplains: null };
  const shares = found.map(({ share }) => share);
  const deviation = Math.max(0.004, medianAbsoluteDeviation(shares));
  const best = found.reduce((most, one) => (one.sure > most.sure ? one : most));
  const mm = Math.abs(best.lag) * cellMm;
  const lap = lapMm !== null && Math.abs(mm - lapMm) < 0.06 * lapMm ? ', the lap of the roller' : '';
  const note = `${mm} mm along the travel${lap}`;
  const explained =
    Math.min(1, best.sure ** 2 / best.cells) * Math.min(1, Math.max(0, best.share) / faintest);
  return {
    ghostRepeat: reading(Math.max(0, best.share - median(shares) - 2 * deviation), deviation, note),
    ghostExplains: reading(
      best.sure > 0 ? explained : 0,
      (1 - explained) * Math.sqrt((4 * explained) / best.cells),
      note,
    ),
  };
}

/** Bare cells away from the border, with what they print beyond their tone and what share of a tone would show there. */
function bareCells({ grid, expected }: PulledTone): {
  readonly cells: Int32Array;
  readonly more: Float64Array;
  readonly shows: Float64Array;
} {
  const { columns, rows } = grid;
  // Only on bare stone is ink beyond doubt too much.
  const clear = clearOfMarks(grid, 0);
  const cells: number[] = [];
  for (let row = borderCells; row < rows - borderCells; row++)
    for (let column = borderCells; column < columns - borderCells; column++)
      if (clear[row * columns + column]) cells.push(row * columns + column);
  return {
    cells: Int32Array.from(cells),
    more: Float64Array.from(cells, (cell) => grid.printed[cell]! - expected.cells[cell]!),
    shows: Float64Array.from(cells, (cell) => 1 - expected.cells[cell]!),
  };
}

interface Shift {
  readonly share: number;
  readonly sure: number;
  readonly cells: number;
}

/** Slope of what bare stone prints on the drawing so many cells before, and how surely they go together. */
function shareAt(
  drawn: Float32Array,
  { cells, more, shows }: ReturnType<typeof bareCells>,
  shift: number,
): Shift {
  let [n, x, y, xx, xy, yy] = [0, 0, 0, 0, 0, 0];
  for (let k = 0; k < cells.length; k++) {
    const from = cells[k]! - shift;
    if (from < 0 || from >= drawn.length) continue;
    const moved = drawn[from]! * shows[k]!;
    const own = more[k]!;
    if (Number.isNaN(moved * own)) continue;
    n++;
    x += moved;
    y += own;
    xx += moved * moved;
    xy += moved * own;
    yy += own * own;
  }
  const spread = xx - (x * x) / n;
  const together = xy - (x * y) / n;
  if (n < 60 || spread < 1) return { share: Number.NaN, sure: 0, cells: n };
  return {
    share: together / spread,
    sure: (together / Math.sqrt(spread * Math.max(1e-9, yy - (y * y) / n))) * Math.sqrt(n),
    cells: n,
  };
}
