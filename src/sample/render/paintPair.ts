import type { Point } from '../../science/geometry/point.ts';
import { type CoverageRaster, emptyCoverage } from './coverageRaster.ts';
import type { AreaMark, Drawing, StrokeMark, Texture } from './drawing.ts';
import { grainThresholds } from './grain.ts';
import { type GrainBreaker, grainBreaker } from './grainBreaker.ts';
import {
  type Damage,
  type DamageField,
  damageAt,
  damageField,
  type ToneTransfer,
  transferTone,
} from './printing.ts';
import { rowSpans } from './rowSpans.ts';

/** Border round the work rectangle in which marks and scum may still lie. */
export const borderMm = 24;

export interface PaintedPair {
  readonly stone: CoverageRaster;
  readonly print: CoverageRaster;
}

export interface PaintSettings {
  readonly drawing: Drawing;
  readonly transfer: ToneTransfer;
  /** Transfers of single zones, where one medium behaves unlike the rest. */
  readonly zoneTransfers?: Readonly<Record<string, ToneTransfer>>;
  readonly damage: Damage;
  readonly cellsPerMm: number;
  readonly seed: number;
}

/**
 * Puts a drawing on a grained stone and prints it: two coverage rasters in stone orientation, cell upon cell.
 * The print keeps the stone's grain: tones that lose shrink their dots, tones that gain grow them.
 */
export function paintPair(settings: PaintSettings): PaintedPair {
  const { drawing, cellsPerMm, seed } = settings;
  const stone = emptyCoverage(drawing.sizeMm, borderMm, cellsPerMm);
  const print = emptyCoverage(drawing.sizeMm, borderMm, cellsPerMm);
  const grain = grainThresholds(seed, stone.columns, stone.rows, cellsPerMm);
  const damage = damageField(settings.damage, drawing.sizeMm, borderMm, seed + 1);
  for (const mark of drawing.marks) {
    const transfer = settings.zoneTransfers?.[mark.zoneId ?? ''] ?? settings.transfer;
    const press = { stone, print, grain, damage, transfer };
    if (mark.kind === 'area') paintArea(press, mark);
    else for (const line of mark.linesMm) paintLine(press, mark, line);
  }
  for (const { centreMm, radiusMm } of drawing.stopOuts) clearDisc([stone, print], centreMm, radiusMm);
  addScum(print, grain, damage);
  return { stone, print };
}

interface Press {
  readonly stone: CoverageRaster;
  readonly print: CoverageRaster;
  readonly grain: Uint8Array;
  readonly damage: DamageField;
  readonly transfer: ToneTransfer;
}

/** How a tone is broken by the grain: films of wash are soft, crayon and ink stand on the heights alone. */
const breakers: Readonly<Record<Texture, GrainBreaker>> = {
  crayon: grainBreaker(5),
  wash: grainBreaker(0.9),
  full: grainBreaker(5),
  resolved: grainBreaker(5),
};
const scumBreaker = grainBreaker(2);

function damagedTone(damage: DamageField, printed: number, drawn: number, xMm: number, yMm: number): number {
  const lost = damageAt(damage, damage.lost, xMm, yMm);
  const closed = drawn > 0.03 ? damageAt(damage, damage.closed, xMm, yMm) : 0;
  const kept = printed * (1 - lost);
  return kept + (1 - kept) * closed;
}

/** Lays coverage over what is there already: the whites that are left are covered by its share. */
function layOver(raster: CoverageRaster, cell: number, coverage: number): void {
  const before = raster.data[cell]!;
  raster.data[cell] = before + (255 - before) * coverage + 0.5;
}

function paintArea(press: Press, mark: AreaMark): void {
  const { stone, print, grain, damage, transfer } = press;
  const drawnBreaker = breakers[mark.texture];
  rowSpans(mark.polygonMm, stone, (row, from, to) => {
    const yMm = (row + 0.5) / stone.cellsPerMm + stone.originMm[1];
    for (let column = from; column < to; column++) {
      const xMm = (column + 0.5) / stone.cellsPerMm + stone.originMm[0];
      const drawn = mark.tone(xMm, yMm);
      if (drawn <= 0) continue;
      const cell = row * stone.columns + column;
      if (mark.texture === 'resolved') {
        const mean = mark.meanTone?.(xMm, yMm) ?? drawn;
        const printedMean = damagedTone(damage, transferTone(transfer, mean), mean, xMm, yMm);
        layOver(stone, cell, drawn);
        layOver(print, cell, shiftedTone(drawn, mean, printedMean));
        continue;
      }
      const height = grain[cell]! / 255;
      const printed = damagedTone(damage, transferTone(transfer, drawn), drawn, xMm, yMm);
      layOver(stone, cell, drawnBreaker(drawn, height));
      layOver(print, cell, (printed < 0.9 ? drawnBreaker : breakers.full)(printed, height));
    }
  });
}

/** Moves a resolved cell so that its neighbourhood's mean becomes the printed one: dots fade, or whites close. */
function shiftedTone(drawn: number, mean: number, printedMean: number): number {
  if (mean <= 0) return 0;
  if (printedMean <= mean) return (drawn * printedMean) / mean;
  return mean >= 1 ? 1 : 1 - ((1 - drawn) * (1 - printedMean)) / (1 - mean);
}

function paintLine(press: Press, mark: StrokeMark, line: readonly Point[]): void {
  for (let i = 0; i + 1 < line.length; i++) paintSegment(press, mark, line[i]!, line[i + 1]!);
}

function paintSegment(press: Press, mark: StrokeMark, start: Point, end: Point): void {
  const { stone, print, grain, damage, transfer } = press;
  const half = mark.widthMm / 2;
  const reach = half + 1 / stone.cellsPerMm;
  const toCell = (mm: number, axis: 0 | 1) => (mm - stone.originMm[axis]) * stone.cellsPerMm;
  const left = Math.max(0, Math.floor(toCell(Math.min(start[0], end[0]) - reach, 0)));
  const right = Math.min(stone.columns - 1, Math.ceil(toCell(Math.max(start[0], end[0]) + reach, 0)));
  const top = Math.max(0, Math.floor(toCell(Math.min(start[1], end[1]) - reach, 1)));
  const bottom = Math.min(stone.rows - 1, Math.ceil(toCell(Math.max(start[1], end[1]) + reach, 1)));
  const dx = end[0] - start[0];
  const dy = end[1] - start[1];
  const lengthSquared = dx * dx + dy * dy || 1;
  for (let row = top; row <= bottom; row++) {
    const yMm = (row + 0.5) / stone.cellsPerMm + stone.originMm[1];
    for (let column = left; column <= right; column++) {
      const xMm = (column + 0.5) / stone.cellsPerMm + stone.originMm[0];
      const along = ((xMm - start[0]) * dx + (yMm - start[1]) * dy) / lengthSquared;
      const t = along < 0 ? 0 : Math.min(along, 1);
      const distance = Math.hypot(xMm - start[0] - t * dx, yMm - start[1] - t * dy);
      const inside = Math.min(1, Math.max(0, (half - distance) * stone.cellsPerMm + 0.5));
      if (inside === 0) continue;
      const cell = row * stone.columns + column;
      const height = grain[cell]! / 255;
      const printed = damagedTone(damage, transferTone(transfer, mark.tone), mark.tone, xMm, yMm);
      stone.data[cell] = Math.max(stone.data[cell]!, 255 * inside * breakers.full(mark.tone, height));
      print.data[cell] = Math.max(print.data[cell]!, 255 * inside * breakers.full(printed, height));
    }
  }
}

function clearDisc(rasters: readonly CoverageRaster[], centreMm: Point, radiusMm: number): void {
  for (const raster of rasters) {
    for (let row = 0; row < raster.rows; row++) {
      const dy = (row + 0.5) / raster.cellsPerMm + raster.originMm[1] - centreMm[1];
      if (Math.abs(dy) > radiusMm + 1) continue;
      for (let column = 0; column < raster.columns; column++) {
        const dx = (column + 0.5) / raster.cellsPerMm + raster.originMm[0] - centreMm[0];
        const outside = Math.min(1, Math.max(0, (Math.hypot(dx, dy) - radiusMm) * raster.cellsPerMm + 0.5));
        if (outside < 1) raster.data[row * raster.columns + column]! *= outside;
      }
    }
  }
}

/** Scum sits on other parts of the grain than the drawing does: the thresholds are read backwards. */
function addScum(print: CoverageRaster, grain: Uint8Array, damage: DamageField): void {
  const last = grain.length - 1;
  for (let row = 0; row < print.rows; row++) {
    const yMm = (row + 0.5) / print.cellsPerMm + print.originMm[1];
    for (let column = 0; column < print.columns; column++) {
      const xMm = (column + 0.5) / print.cellsPerMm + print.originMm[0];
      const scum = damageAt(damage, damage.scum, xMm, yMm);
      if (scum < 0.001) continue;
      const cell = row * print.columns + column;
      layOver(print, cell, scumBreaker(scum, grain[last - cell]! / 255));
    }
  }
}
