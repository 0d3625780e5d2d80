import type { Point } from '../../science/geometry/point.ts';
import { quantile } from '../../science/statistics/quantile.ts';
import type { Mask, Raster } from '../raster.ts';
import type { StretchFit } from './stretchKriging.ts';

export interface StatedErrors {
  readonly residualMm: { readonly median: number; readonly p90: number };
  /** Local standard deviation along one axis, mm, on a coarse grid over the work rectangle. */
  readonly errorMm: Raster;
}

const gridStepMm = 20;
/** No correspondence is better than this: pixel noise common to all tiles, lens and paper below the tiles' size. */
const leastMm = 0.001;
/** Lengths of a two-dimensional normal error at ten even quantiles, in standard deviations (Rayleigh distribution). */
const rayleigh = Array.from({ length: 10 }, (_, i) => Math.sqrt(-2 * Math.log(1 - (i + 0.5) / 10)));

/**
 * What the registration may be off by: the fit's own standard deviations, scaled by how well it predicts tiles left out of it,
 * as the median and the 90 % point of the length of the error over the covered rectangle.
 */
export function statedErrors(fit: StretchFit, [widthMm, heightMm]: Point, covered: Mask): StatedErrors {
  const { everywhere, inTheMiddle } = heldOutScales(fit);
  const columns = Math.max(2, Math.ceil(widthMm / gridStepMm));
  const rows = Math.max(2, Math.ceil(heightMm / gridStepMm));
  const pxPerMm = Math.max(columns / widthMm, rows / heightMm);
  const data = new Float32Array(columns * rows);
  const lengths: number[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const place: Point = [
        Math.min(widthMm, (column + 0.5) / pxPerMm),
        Math.min(heightMm, (row + 0.5) / pxPerMm),
      ];
      const { x, y } = fit.sdAt(place);
      const deviation = everywhere * Math.hypot(x, y, leastMm) * Math.SQRT1_2;
      data[row * columns + column] = deviation;
      if (isCovered(covered, place)) lengths.push(...rayleigh.map((length) => length * deviation));
    }
  }
  return {
    residualMm: {
      median: (quantile(lengths, 0.5) * inTheMiddle) / everywhere,
      p90: quantile(lengths, 0.9) * edgeFactor,
    },
    errorMm: { widthPx: columns, heightPx: rows, pxPerMm, originMm: [0, 0], data },
  };
}

/**
 * At the edges, where nothing is drawn, the fit knows less than it thinks: on unspoiled pairs rendered by two programs the
 * true 90 % point was 1.2 to 2.7 times the fit's own, 1.6 in the middle. It says too little where a picture is clipped.
 */
const edgeFactor = 1.6;
/** The least that the middle of the field is believed to be better than the fit says. */
const leastScale = 0.5;

/**
 * Root mean square of the left-out misfits in standard deviations, tails cut: 1 for an honest fit. Where tiles agree better
 * than the fit thinks, that holds in the middle; at the edges, where there is nothing to leave out, it is not believed.
 */
function heldOutScales(fit: StretchFit): { readonly everywhere: number; readonly inTheMiddle: number } {
  const { x, y } = fit.leftOut();
  const squares = [...x, ...y].map((value) => Math.min(9, value * value));
  const scale = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / Math.max(1, squares.length));
  return { everywhere: Math.max(1, scale), inTheMiddle: Math.max(leastScale, scale) };
}

function isCovered(mask: Mask, [xMm, yMm]: Point): boolean {
  const x = Math.min(mask.widthPx - 1, Math.floor(xMm * mask.pxPerMm));
  const y = Math.min(mask.heightPx - 1, Math.floor(yMm * mask.pxPerMm));
  return mask.data[y * mask.widthPx + x]! > 0;
}
