import type { Chip } from '../../records/zone.ts';
import { applyHomography, invertHomography } from '../../science/geometry/homography.ts';
import { containsPoint } from '../../science/geometry/polygon.ts';
import type { Photograph } from '../photograph.ts';
import type { PlaneMap } from '../planeMap.ts';
import type { Frame } from '../raster.ts';
import type { CellGrid } from './cellGrid.ts';
import { type LightSurface, surfaceAt } from './lightSurface.ts';
import type { SeenChip } from './responseFit.ts';

/** Chips are read inside this share of their size, so that a rim or a shadow at the edge doesn't count. */
const innerShare = 0.7;

/**
 * Reads chips off a photograph: mean code by channel, and the light on each by the ground's smooth light carried there.
 * @param surface of the ground, on `grid` laid over `frame`; beyond it the quadratic is continued.
 */
export function seenChips(
  photo: Photograph,
  chips: readonly Chip[],
  map: PlaneMap,
  frame: Frame,
  grid: CellGrid,
  surface: LightSurface,
): SeenChip[] {
  const back = invertHomography(map.homography);
  if (!back) return [];
  return chips.flatMap((chip) => {
    const centre = chip.polygonPx
      .reduce((sum, [x, y]) => [sum[0]! + x, sum[1]! + y], [0, 0])
      .map((value) => value / chip.polygonPx.length);
    const inner = chip.polygonPx.map(([x, y]): readonly [number, number] => [
      centre[0]! + (x - centre[0]!) * innerShare,
      centre[1]! + (y - centre[1]!) * innerShare,
    ]);
    const code = meanCode(photo, inner);
    if (!code) return [];
    const [xMm, yMm] = applyHomography(back, [centre[0]!, centre[1]!]);
    const cellMm = grid.cellPx / frame.pxPerMm;
    const x = (((xMm - frame.originMm[0]) / cellMm - 0.5) / Math.max(1, grid.columns - 1)) * 2 - 1;
    const y = (((yMm - frame.originMm[1]) / cellMm - 0.5) / Math.max(1, grid.rows - 1)) * 2 - 1;
    const terms = [1, x, y, x * x, x * y, y * y];
    const light = [0, 1, 2].map((channel) => Math.exp(surfaceAt(surface, channel, terms)));
    return [{ code, reflectance: chip.reflectance, light: [light[0]!, light[1]!, light[2]!] }];
  });
}

function meanCode(
  photo: Photograph,
  polygonPx: readonly (readonly [number, number])[],
): [number, number, number] | null {
  const { widthPx, heightPx, channels, codes } = photo;
  const xs = polygonPx.map(([x]) => x);
  const ys = polygonPx.map(([, y]) => y);
  const sums = [0, 0, 0];
  let count = 0;
  for (
    let y = Math.max(0, Math.floor(Math.min(...ys)));
    y < Math.min(heightPx, Math.ceil(Math.max(...ys)));
    y++
  ) {
    for (
      let x = Math.max(0, Math.floor(Math.min(...xs)));
      x < Math.min(widthPx, Math.ceil(Math.max(...xs)));
      x++
    ) {
      if (!containsPoint(polygonPx, [x + 0.5, y + 0.5])) continue;
      const at = (y * widthPx + x) * channels;
      for (let channel = 0; channel < 3; channel++)
        sums[channel]! += codes[at + Math.min(channel, channels - 1)]!;
      count++;
    }
  }
  if (count === 0) return null;
  const scale = 1 / (count * (photo.toLinear.length - 1));
  return [sums[0]! * scale, sums[1]! * scale, sums[2]! * scale];
}
