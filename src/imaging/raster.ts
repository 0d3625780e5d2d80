import type { Point } from '../science/geometry/point.ts';

/**
 * Where a raster's pixels lie in stone mm: pixel (i, j) has its centre at
 * `originMm + ((i + 0.5) / pxPerMm, (j + 0.5) / pxPerMm)`. The origin may be negative: a frame may reach beyond the work rectangle.
 */
export interface Frame {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerMm: number;
  readonly originMm: Point;
}

/** One plane of numbers in the stone's frame; NaN where the photograph has nothing. */
export interface Raster extends Frame {
  readonly data: Float32Array;
}

/** Linear light in three channels in the stone's frame; NaN in all where the photograph has nothing. */
export interface ColourRaster extends Frame {
  readonly planes: readonly [Float32Array, Float32Array, Float32Array];
}

/** A yes/no plane in the stone's frame: 255 yes, 0 no. */
export interface Mask extends Frame {
  readonly data: Uint8Array;
}
