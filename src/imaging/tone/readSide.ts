import type { GroundRecord, ResponseRecord } from '../../records/comparison.ts';
import { median } from '../../science/statistics/quantile.ts';
import { gaussianBlur } from '../operations/gaussianBlur.ts';
import { photographPxPerFramePx, rowMapper } from '../operations/mapPoint.ts';
import { sampleLinear } from '../operations/sampleLinear.ts';
import type { Photograph } from '../photograph.ts';
import type { ColourRaster, Frame } from '../raster.ts';
import { bareBetweenMarks, windowNoise } from './bareBetweenMarks.ts';
import { type BareCells, cellKind, findBareCells } from './bareCells.ts';
import { type CellGrid, cellGrid } from './cellGrid.ts';
import { cellKinds } from './cellKinds.ts';
import { type FoundSolid, findSolid } from './findSolid.ts';
import { type BetweenMarks, darknessOf, type GroundField, groundField } from './groundField.ts';
import { surfaceAt, surfaceTerms } from './lightSurface.ts';
import { type FittedResponse, fitResponse, withResponse } from './responseFit.ts';
import { seenChips } from './seenChips.ts';
import { sharpnessOf } from './sharpness.ts';
import type { SideInput } from './sideInput.ts';
import { countedPixels, groundCellPx, toneFrame } from './toneFrame.ts';

/** One object read: its darkness everywhere, and what that rests on. */
export interface SideTone {
  readonly frame: Frame;
  readonly raster: ColourRaster;
  readonly ground: GroundField;
  readonly bare: BareCells;
  /** `1 − R/R_ground`, NaN off the photograph. */
  readonly darkness: Float32Array;
  /** 1 in the work rectangle under the sheet. */
  readonly counts: Uint8Array;
  readonly solid: FoundSolid | null;
  readonly groundRecord: GroundRecord;
  readonly response: ResponseRecord;
  /** Standard deviation of log light from pixel to pixel on bare ground. */
  readonly noise: number;
  /** Photograph px to the millimetre. */
  readonly photoPxPerMm: number;
  /** Share of the counted pixels in which a channel is clipped. */
  readonly clipped: number;
  /** See `sharpnessOf`. */
  readonly sharpness: number;
}

/** Log light by which a bare cell may depart from the smooth surface: stone mottles, paper hardly. */
const toleranceLog = { stone: 0.05, proof: 0.03 };
/** Cells of bare ground needed outside the work rectangle, all round, to trust them for the level: 4 cm². */
const leastOutsideCells = 400;

/** Reads one object; null where no bare ground can be found on it. */
export function readSide(input: SideInput): SideTone | null {
  const frame = toneFrame(input.sizeMm);
  const fitted = input.chips.length > 0 ? responseOf(input) : null;
  const photo = fitted ? withResponse(input.photo, fitted) : input.photo;
  const raster = evened(sampleLinear(photo, input.map, frame), input, frame);
  const counts = countedPixels(frame, input.sizeMm, input.covered);
  const grid = cellGrid(raster, null, groundCellPx);
  const kinds = cellKinds(grid, frame, input.sizeMm, input.zones);
  if (input.covered) markOffSheet(kinds, grid, counts, frame);
  const bare = findBareCells(grid, {
    kinds,
    toleranceLog: toleranceLog[input.side],
    startOutside: input.side === 'proof',
  });
  if (!bare) return null;
  const noise = median(
    [...bare.bare.keys()].filter((cell) => bare.bare[cell]).map((cell) => grid.spread[cell]!),
  );
  const ground = groundField(grid, bare, betweenMarks(raster, grid, kinds, bare, toleranceLog[input.side]));
  const darkness = darknessOf(raster, ground);
  return {
    frame,
    raster,
    ground,
    bare,
    darkness,
    counts,
    solid: findSolid(darkness, counts, frame),
    groundRecord: groundRecordOf(input, kinds, bare),
    response: { origin: fitted ? 'chips' : 'standard-curve', residual: fitted?.residual ?? null },
    noise,
    photoPxPerMm: photographPxPerFramePx(input.map, frame) * frame.pxPerMm,
    clipped: clippedShare(input.photo, input.map, frame, counts),
    sharpness: sharpnessOf(input, frame),
  };
}

/** Light and response depend on each other: the light is found on a coarse raster, the response fitted, twice over. */
function responseOf(input: SideInput): FittedResponse | null {
  const fine = toneFrame(input.sizeMm);
  const frame: Frame = {
    widthPx: Math.round(fine.widthPx / fine.pxPerMm),
    heightPx: Math.round(fine.heightPx / fine.pxPerMm),
    pxPerMm: 1,
    originMm: fine.originMm,
  };
  let response: FittedResponse | null = null;
  for (let round = 0; round < 2; round++) {
    const photo: Photograph = response ? withResponse(input.photo, response) : input.photo;
    const grid = cellGrid(sampleLinear(photo, input.map, frame), null, 2);
    const kinds = cellKinds(grid, frame, input.sizeMm, input.zones);
    const bare = findBareCells(grid, { kinds, toleranceLog: toleranceLog.stone, startOutside: false });
    if (!bare) return response;
    const chips = seenChips(input.photo, input.chips, input.map, frame, grid, bare.surface);
    response = fitResponse(chips) ?? response;
  }
  return response;
}

/** Divides by the light on the white sheet, smoothed over a centimetre so that its own grain doesn't come in. */
function evened(raster: ColourRaster, input: SideInput, frame: Frame): ColourRaster {
  if (!input.flat) return raster;
  const flat = sampleLinear(input.flat, input.map, frame);
  const planes = raster.planes.map((plane, channel) => {
    const own = flat.planes[channel]!.map((value) => (Number.isNaN(value) ? 0 : value));
    const light = gaussianBlur(own, frame.widthPx, frame.heightPx, 2 * frame.pxPerMm);
    return plane.map((value, i) => value / Math.max(light[i]!, 1e-3));
  });
  return { ...frame, planes: [planes[0]!, planes[1]!, planes[2]!] };
}

/** Inside the rectangle but off the sheet there is table, not paper. */
function markOffSheet(kinds: Uint8Array, grid: CellGrid, counts: Uint8Array, frame: Frame): void {
  for (let cell = 0; cell < kinds.length; cell++) {
    if (kinds[cell] === cellKind.outside) continue;
    const x = ((cell % grid.columns) + 0.5) * grid.cellPx;
    const y = (Math.floor(cell / grid.columns) + 0.5) * grid.cellPx;
    if (counts[Math.floor(y) * frame.widthPx + Math.floor(x)] === 0) kinds[cell] = cellKind.neverBare;
  }
}

function betweenMarks(
  raster: ColourRaster,
  grid: CellGrid,
  kinds: Uint8Array,
  bare: BareCells,
  tolerance: number,
): BetweenMarks {
  const unknown = (cell: number) => kinds[cell] === cellKind.unknown && !bare.bare[cell];
  const wanted = [...kinds.keys()].filter(
    (cell) =>
      (cell % grid.columns) % blockCells === 1 &&
      Math.floor(cell / grid.columns) % blockCells === 1 &&
      unknown(cell),
  );
  const middles = bareBetweenMarks(raster, grid, wanted, windowNoise(grid, bare.bare));
  const levels = [...middles].flatMap(([cell, level]) =>
    blockRound(cell, grid.columns)
      .filter(unknown)
      .map((near) => [near, level] as const),
  );
  return new Map(
    levels.filter(([cell, level]) => {
      const terms = surfaceTerms(grid, cell);
      const off =
        level.reduce((sum, value, channel) => sum + value - surfaceAt(bare.surface, channel, terms), 0) / 3;
      return Math.abs(off) <= tolerance;
    }),
  );
}

/** Windows overlap so much that one in three cells each way says all: its level stands for the block round it. */
const blockCells = 3;

function blockRound(cell: number, columns: number): number[] {
  return [-1, 0, 1].flatMap((dy) => [-1, 0, 1].map((dx) => cell + dy * columns + dx));
}

function groundRecordOf(input: SideInput, kinds: Uint8Array, bare: BareCells): GroundRecord {
  if (input.flat) return { origin: 'white-sheet', limit: null };
  const outside = kinds.reduce(
    (sum, kind, cell) => sum + (kind === cellKind.outside ? bare.bare[cell]! : 0),
    0,
  );
  if (outside >= leastOutsideCells) return { origin: 'outside', limit: null };
  const limit =
    input.side === 'proof'
      ? 'The ground was found inside the work rectangle only: an even scum over all of it could not be seen.'
      : null;
  return { origin: 'bare-places', limit };
}

/** Share of counted places at which a channel of the photograph stands at its highest codes: every fourth place, its nearest px. */
function clippedShare(photo: Photograph, map: SideInput['map'], frame: Frame, counts: Uint8Array): number {
  const { codes, channels, widthPx, heightPx } = photo;
  const full = (photo.toLinear.length - 1) * 0.992;
  const mapRow = rowMapper(map, frame);
  const xs = new Float64Array(frame.widthPx);
  const ys = new Float64Array(frame.widthPx);
  let clipped = 0;
  let all = 0;
  for (let y = 2; y < frame.heightPx; y += 4) {
    mapRow(y, xs, ys);
    for (let x = 2; x < frame.widthPx; x += 4) {
      if (!counts[y * frame.widthPx + x]) continue;
      const [px, py] = [Math.floor(xs[x]!), Math.floor(ys[x]!)];
      if (px < 0 || py < 0 || px >= widthPx || py >= heightPx) continue;
      const at = (py * widthPx + px) * channels;
      all++;
      for (let channel = 0; channel < channels; channel++) {
        if (codes[at + channel]! < full) continue;
        clipped++;
        break;
      }
    }
  }
  return all === 0 ? 0 : clipped / all;
}
