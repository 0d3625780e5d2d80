import { median } from '../../science/statistics/quantile.ts';
import { gaussianBlur } from '../operations/gaussianBlur.ts';
import { photographPxPerFramePx } from '../operations/mapPoint.ts';
import { sampleGrey } from '../operations/sampleLinear.ts';
import type { Frame } from '../raster.ts';
import type { SideInput } from './sideInput.ts';

/**
 * Fine against coarser structure at the photograph's own resolution, where something is drawn: variance between σ 0 and 1 px
 * over variance between 1 and 3 px, noise as seen on bare ground taken off. About 0.1 to 1 for a sharp photograph.
 */
export function sharpnessOf(input: SideInput, frame: Frame): number {
  const pxPerMm = photographPxPerFramePx(input.map, frame) * frame.pxPerMm;
  const sizeMm = 24;
  const px = Math.min(200, Math.round(sizeMm * pxPerMm));
  const ratios: { fine: number; coarse: number }[] = [];
  for (const [xMm, yMm] of tileCorners(input, px / pxPerMm)) {
    const frame = { widthPx: px, heightPx: px, pxPerMm, originMm: [xMm, yMm] as const };
    const tile = sampleGrey(input.photo, input.map, frame);
    if (tile.data.some((value) => Number.isNaN(value))) continue;
    const one = gaussianBlur(tile.data, px, px, 1);
    const three = gaussianBlur(tile.data, px, px, 3);
    ratios.push({ fine: varianceBetween(tile.data, one, px), coarse: varianceBetween(one, three, px) });
  }
  if (ratios.length < 4) return 1;
  const quiet = Math.min(...ratios.map((ratio) => ratio.fine));
  const drawn = ratios.toSorted((a, b) => b.coarse - a.coarse).slice(0, Math.ceil(ratios.length / 3));
  return median(drawn.map((ratio) => Math.max(0, ratio.fine - quiet) / Math.max(ratio.coarse, 1e-9)));
}

function tileCorners({ sizeMm }: SideInput, tileMm: number): (readonly [number, number])[] {
  const across = 6;
  return Array.from({ length: across * across }, (_, i): readonly [number, number] => [
    ((i % across) / (across - 1)) * Math.max(0, sizeMm[0] - tileMm),
    (Math.floor(i / across) / (across - 1)) * Math.max(0, sizeMm[1] - tileMm),
  ]);
}

function varianceBetween(a: Float32Array, b: Float32Array, size: number): number {
  let sum = 0;
  let squares = 0;
  let count = 0;
  for (let y = 10; y < size - 10; y++) {
    for (let i = y * size + 10; i < (y + 1) * size - 10; i++) {
      const off = a[i]! - b[i]!;
      sum += off;
      squares += off * off;
      count++;
    }
  }
  return count === 0 ? 0 : squares / count - (sum / count) ** 2;
}
