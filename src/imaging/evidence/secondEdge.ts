import type { FeatureReading } from '../../records/suspects.ts';
import { medianAbsoluteDeviation } from '../../science/statistics/quantile.ts';
import type { Raster } from '../raster.ts';
import { toneAt } from './expectedTone.ts';
import { reading } from './reading.ts';

const offsetsMm = [1, 1.5, 2, 3, 4];
/** Over half a turn: the other half is the same with its sign changed. */
const directions = 8;
/** Darks are left out: ink may be drawn off them alone, which is another fault. */
const lightest = 0.66;
/** Of a large map so many lines are looked at. */
const mostLines = 130;
/** Within so many degrees of the travel a second edge lies along it. */
const alongDegrees = 14;

/**
 * A second edge beside the drawing's edges, to one side only: what the print has there, as a share of the drawing moved that
 * way less the same moved the other way, so that plain gain counts for nothing. `smear`: the same where it lies along the
 * travel. Below 1 mm the maps' smoothing hides it.
 * @param besideDark whether a place lies beside dark work, off which ink may be drawn: not looked at.
 */
export function secondEdge(
  drawn: Raster,
  printed: Raster,
  curve: readonly number[],
  across: boolean,
  besideDark: (xMm: number, yMm: number) => boolean,
): { secondEdge: FeatureReading | null; smear: FeatureReading | null } {
  const every = Math.max(1, Math.floor(drawn.heightPx / mostLines));
  const more = tooMuch(drawn, printed, curve, every, besideDark);
  const shares: { share: number; degrees: number; mm: number }[] = [];
  for (const mm of offsetsMm)
    for (let k = 0; k < directions; k++) {
      const degrees = (180 * k) / directions;
      const share = shareMoved(drawn, more, every, mm, (degrees * Math.PI) / 180);
      if (!Number.isNaN(share))
        shares.push({ share, degrees, mm }, { share: -share, degrees: degrees + 180, mm });
    }
  if (shares.length < directions) return { secondEdge: null, smear: null };
  const best = shares.reduce((most, one) => (one.share > most.share ? one : most));
  // Directions at right angles to the best show what chance and misregistration do.
  const aside = shares.filter(
    ({ degrees }) => Math.abs(Math.cos(((degrees - best.degrees) * Math.PI) / 180)) < 0.4,
  );
  const deviation = Math.max(0.01, medianAbsoluteDeviation(aside.map(({ share }) => share)));
  const travel = across ? 0 : 90;
  const turned = Math.abs(((((best.degrees - travel) % 180) + 270) % 180) - 90);
  const note = `${best.mm} mm, ${turned <= alongDegrees ? 'along the travel' : `${Math.round(turned)}° off the travel`}`;
  return {
    secondEdge: reading(Math.max(0, best.share), deviation, note),
    smear: reading(turned <= alongDegrees ? Math.max(0, best.share) : 0, deviation, note),
  };
}

function shareMoved(drawn: Raster, more: Float32Array, every: number, mm: number, angle: number): number {
  const { widthPx, heightPx, pxPerMm } = drawn;
  const dx = Math.round(mm * pxPerMm * Math.cos(angle));
  const dy = Math.round(mm * pxPerMm * Math.sin(angle));
  const shift = dy * widthPx + dx;
  let [top, bottom] = [0, 0];
  for (let y = Math.ceil(Math.abs(dy) / every) * every; y < heightPx - Math.abs(dy); y += every) {
    for (let x = Math.abs(dx); x < widthPx - Math.abs(dx); x++) {
      const i = y * widthPx + x;
      if (Number.isNaN(more[i]!)) continue;
      const d = drawn.data[i]!;
      const [before, after] = [drawn.data[i - shift]!, drawn.data[i + shift]!];
      if (before > lightest || after > lightest) continue;
      const moved = (before - after) * (1 - d);
      if (Number.isNaN(moved)) continue;
      top += more[i]! * moved;
      bottom += moved * moved;
    }
  }
  return bottom < 5 ? Number.NaN : top / bottom;
}

/** What the print has beyond its expected tone, on every so many lines; NaN beside darks. */
function tooMuch(
  drawn: Raster,
  printed: Raster,
  curve: readonly number[],
  every: number,
  besideDark: (xMm: number, yMm: number) => boolean,
): Float32Array {
  const more = new Float32Array(drawn.data.length).fill(Number.NaN);
  for (let y = 0; y < drawn.heightPx; y += every)
    for (let x = 0, i = y * drawn.widthPx; x < drawn.widthPx; x++, i++)
      if (!besideDark((x + 0.5) / drawn.pxPerMm, (y + 0.5) / drawn.pxPerMm))
        more[i] = printed.data[i]! - toneAt(curve, drawn.data[i]!);
  return more;
}
