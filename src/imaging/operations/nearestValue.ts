import type { Raster } from '../raster.ts';

/** The value of a raster in the pixel nearest to a place, stone mm; beyond its edge that of the edge. 0 where there is none. */
export function nearestValue(
  { data, widthPx, heightPx, originMm, pxPerMm }: Raster,
  xMm: number,
  yMm: number,
): number {
  const x = Math.min(widthPx - 1, Math.max(0, Math.floor((xMm - originMm[0]) * pxPerMm)));
  const y = Math.min(heightPx - 1, Math.max(0, Math.floor((yMm - originMm[1]) * pxPerMm)));
  return data[y * widthPx + x] || 0;
}
