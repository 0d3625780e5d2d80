import type { Homography } from '../../science/geometry/homography.ts';
import type { Point } from '../../science/geometry/point.ts';
import { photographPxPerFramePx, stretchAt } from '../operations/mapPoint.ts';
import type { PlaneMap, Stretch } from '../planeMap.ts';
import type { Frame } from '../raster.ts';
import type { Displacement } from './displacement.ts';
import { type GreyPyramid, samplePyramid } from './greyPyramid.ts';
import { fitStretchRobustly, type StretchFit } from './stretchKriging.ts';
import { createTileMatcher } from './tileShift.ts';

/** The stretch found, as a map and as the fit it comes from. */
export interface RefinedMap {
  readonly map: PlaneMap;
  readonly fit: StretchFit;
  /** Tiles measured in the last pass, and those that the fit kept. */
  readonly measured: number;
}

/** One pass: how fine, how large the tiles, how far apart, how far they may still be off. */
interface Pass {
  readonly pxPerMm: number;
  readonly tilePx: number;
  readonly radiusPx: number;
  readonly spacingMm: number;
  readonly blurPx: number;
  /** Tiles whose peak stands out less are left out. */
  readonly leastSharpness: number;
}

const coarsePass: Pass = { pxPerMm: 2, tilePx: 64, radiusPx: 8, spacingMm: 16, blurPx: 1, leastSharpness: 5 };
const middlePass: Pass = { pxPerMm: 4, tilePx: 64, radiusPx: 5, spacingMm: 13, blurPx: 1, leastSharpness: 5 };
const finePass: Pass = {
  pxPerMm: 8,
  tilePx: 128,
  radiusPx: 5,
  spacingMm: 14,
  blurPx: 1.2,
  leastSharpness: 5,
};

/** Where tones are read over millimetres, neither finer passes nor tiles closer than so many mm are worth their time. */
export interface SparingPasses {
  readonly finestPxPerMm: number;
  readonly spacingMm: number;
}

/** Spacing of the stretch's nodes and how far they reach beyond the work rectangle. */
const nodeStepMm = 10;
const nodeRoomMm = 40;

/**
 * Finds the smooth stretch of the print by tiles in three passes, coarse to fine; each pass measures where the tiles still lie
 * off and fits the whole stretch afresh.
 * @param sparing null: all passes as they are.
 * @returns null where too few tiles can be matched.
 */
export function refineStretch(
  stone: GreyPyramid,
  stoneMap: PlaneMap,
  print: GreyPyramid,
  start: Homography,
  sizeMm: Point,
  onPass: (done: number) => boolean,
  sparing: SparingPasses | null = null,
): RefinedMap | null {
  const finest = Math.min(
    photographPxPerFramePx(stoneMap, millimetreFrame(sizeMm)),
    photographPxPerFramePx({ homography: start, stretch: null }, millimetreFrame(sizeMm)),
  );
  const { finestPxPerMm, spacingMm } = sparing ?? { finestPxPerMm: Infinity, spacingMm: 0 };
  const passes = [coarsePass, middlePass, finePass]
    .filter((pass, i) => i === 0 || (pass.pxPerMm <= 1.7 * finest && pass.pxPerMm <= finestPxPerMm))
    .map((pass) => ({ ...pass, spacingMm: Math.max(pass.spacingMm, spacingMm) }));
  let refined: RefinedMap | null = null;
  let map: PlaneMap = { homography: start, stretch: null };
  for (const [i, pass] of passes.entries()) {
    const measured = measureTiles(stone, stoneMap, print, map, sizeMm, pass);
    const fit = fitStretchRobustly(measured, Math.hypot(...sizeMm), null);
    if (!fit) return refined;
    map = { homography: start, stretch: stretchGrid(fit, sizeMm) };
    refined = { map, fit, measured: measured.length };
    if (!onPass((i + 1) / passes.length)) return refined;
  }
  return refined;
}

/** Where every tile lies in all, as the stretch that would bring it home. */
function measureTiles(
  stone: GreyPyramid,
  stoneMap: PlaneMap,
  print: GreyPyramid,
  map: PlaneMap,
  sizeMm: Point,
  pass: Pass,
): Displacement[] {
  const frame: Frame = {
    widthPx: Math.round(sizeMm[0] * pass.pxPerMm),
    heightPx: Math.round(sizeMm[1] * pass.pxPerMm),
    pxPerMm: pass.pxPerMm,
    originMm: [0, 0],
  };
  if (Math.min(frame.widthPx, frame.heightPx) < pass.tilePx) return [];
  const first = samplePyramid(stone, stoneMap, frame);
  const second = samplePyramid(print, map, frame);
  const match = createTileMatcher(pass.tilePx, pass.radiusPx, pass.blurPx);
  const found: Displacement[] = [];
  for (const top of placesAlong(frame.heightPx, pass)) {
    for (const left of placesAlong(frame.widthPx, pass)) {
      const shift = match(first, second, frame.widthPx, left, top);
      if (!shift || shift.sharpness < pass.leastSharpness) continue;
      const limit = pass.radiusPx - 0.5;
      if (Math.abs(shift.dx) > limit || Math.abs(shift.dy) > limit) continue;
      const stoneMm: Point = [
        (left + pass.tilePx / 2) / pass.pxPerMm,
        (top + pass.tilePx / 2) / pass.pxPerMm,
      ];
      const dx = shift.dx / pass.pxPerMm;
      const dy = shift.dy / pass.pxPerMm;
      const before = map.stretch ? stretchAt(map.stretch, [stoneMm[0] + dx, stoneMm[1] + dy]) : [0, 0];
      found.push({
        stoneMm,
        dxMm: dx + before[0]!,
        dyMm: dy + before[1]!,
        varianceX: shift.varianceX / pass.pxPerMm ** 2,
        varianceY: shift.varianceY / pass.pxPerMm ** 2,
      });
    }
  }
  return found;
}

function placesAlong(lengthPx: number, pass: Pass): number[] {
  const room = lengthPx - pass.tilePx;
  const steps = Math.max(1, Math.round(room / (pass.spacingMm * pass.pxPerMm)));
  return Array.from({ length: steps + 1 }, (_, i) => Math.round((room * i) / steps));
}

function stretchGrid(fit: StretchFit, [widthMm, heightMm]: Point): Stretch {
  const columns = Math.ceil((widthMm + 2 * nodeRoomMm) / nodeStepMm) + 1;
  const rows = Math.ceil((heightMm + 2 * nodeRoomMm) / nodeStepMm) + 1;
  const dxMm = new Float32Array(columns * rows);
  const dyMm = new Float32Array(columns * rows);
  for (let i = 0; i < columns * rows; i++) {
    const place: Point = [
      (i % columns) * nodeStepMm - nodeRoomMm,
      Math.floor(i / columns) * nodeStepMm - nodeRoomMm,
    ];
    const { dx, dy } = fit.at(place);
    dxMm[i] = dx;
    dyMm[i] = dy;
  }
  return { columns, rows, stepMm: nodeStepMm, originMm: [-nodeRoomMm, -nodeRoomMm], dxMm, dyMm };
}

function millimetreFrame([widthMm, heightMm]: Point): Frame {
  return { widthPx: Math.round(widthMm), heightPx: Math.round(heightMm), pxPerMm: 1, originMm: [0, 0] };
}
