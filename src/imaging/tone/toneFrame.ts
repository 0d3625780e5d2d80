import type { Point } from '../../science/geometry/point.ts';
import type { Frame, Mask } from '../raster.ts';

/** Tones are read at this many px to the millimetre: finer than the smoothing by four, coarse enough to be quick. */
export const tonePxPerMm = 4;
/** Side of a ground cell in raster px: 1 mm. */
export const groundCellPx = 4;
/** How far round the work rectangle the ground is looked for. */
export const marginMm = 34;

/** The work rectangle with its margin. */
export function toneFrame([widthMm, heightMm]: Point): Frame {
  return {
    widthPx: Math.round((widthMm + 2 * marginMm) * tonePxPerMm),
    heightPx: Math.round((heightMm + 2 * marginMm) * tonePxPerMm),
    pxPerMm: tonePxPerMm,
    originMm: [-marginMm, -marginMm],
  };
}

/** Which pixels of the frame lie in the work rectangle and, where a sheet is given, on it: 1 or 0. */
export function countedPixels(frame: Frame, [widthMm, heightMm]: Point, covered: Mask | null): Uint8Array {
  const counts = new Uint8Array(frame.widthPx * frame.heightPx);
  for (let y = 0; y < frame.heightPx; y++) {
    const yMm = frame.originMm[1] + (y + 0.5) / frame.pxPerMm;
    if (yMm < 0 || yMm > heightMm) continue;
    for (let x = 0; x < frame.widthPx; x++) {
      const xMm = frame.originMm[0] + (x + 0.5) / frame.pxPerMm;
      if (xMm < 0 || xMm > widthMm) continue;
      counts[y * frame.widthPx + x] = covered ? maskAt(covered, xMm, yMm) : 1;
    }
  }
  return counts;
}

/** 1 where the mask says yes at a place in stone mm, 0 elsewhere and off the mask. */
function maskAt(mask: Mask, xMm: number, yMm: number): 0 | 1 {
  const x = Math.floor((xMm - mask.originMm[0]) * mask.pxPerMm);
  const y = Math.floor((yMm - mask.originMm[1]) * mask.pxPerMm);
  if (x < 0 || y < 0 || x >= mask.widthPx || y >= mask.heightPx) return 0;
  return mask.data[y * mask.widthPx + x]! > 0 ? 1 : 0;
}
