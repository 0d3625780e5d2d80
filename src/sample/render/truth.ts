import type { Verdict, WarningCode } from '../../records/comparison.ts';
import type { Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import { type Body, insideMm } from './body.ts';
import type { Camera } from './camera.ts';
import type { CoverageRaster } from './coverageRaster.ts';
import type { SheetMap } from './dampStretch.ts';
import type { PaintedPair } from './paintPair.ts';
import { rowSpans } from './rowSpans.ts';
import { changeMaps, type TruthMaps } from './truthMaps.ts';

/** One place and where it truly lies on both photographs. */
export interface TruthSample {
  readonly stoneMm: Point;
  readonly stonePx: Point;
  readonly proofPx: Point;
  readonly onSheet: boolean;
}

export interface TruthZone {
  readonly id: string;
  /** Mean coverage over the whole polygon. */
  readonly drawn: number;
  /** Mean coverage over the part on the sheet; null under 5 %. */
  readonly printed: number | null;
  readonly visible: number;
  /** What became of it where that is beyond doubt; null where it is a matter of definition. */
  readonly change: 'held' | 'lost' | 'filled' | 'scum' | 'lighter' | 'darker' | null;
}

export interface Truth {
  readonly verdict: Verdict;
  readonly warnings: readonly WarningCode[];
  readonly grid: readonly TruthSample[];
  readonly zones: readonly TruthZone[];
  readonly areas: TruthMaps['areas'];
  readonly inkReflectance: readonly number[];
}

export const truthCellsPerMm = 2;
/** Places across and down at which the truth says where they lie. */
const gridCount = 33;

interface TruthSources {
  readonly painted: PaintedPair;
  readonly sizeMm: Point;
  readonly zones: readonly Zone[];
  readonly sheet: SheetMap;
  readonly sheetBody: Body;
  readonly stoneCamera: Camera;
  readonly printCamera: Camera;
  readonly verdict: Verdict;
  readonly warnings: readonly WarningCode[];
}

/** Everything that a measurement of the pair ought to find, and the maps at 2 cells a mm over the work rectangle. */
export function truthOf(sources: TruthSources): { readonly truth: Truth; readonly maps: TruthMaps } {
  const { painted, sizeMm, sheet, sheetBody } = sources;
  const onSheet = (stoneMm: Point) => insideMm(sheetBody, ...sheet.toSheetMm(stoneMm)) > 0;
  const grid = sampleGrid(sizeMm, gridCount).map((stoneMm) => ({
    stoneMm,
    stonePx: sources.stoneCamera.toPx(stoneMm),
    proofPx: sources.printCamera.toPx(sheet.toSheetMm(stoneMm)),
    onSheet: onSheet(stoneMm),
  }));
  const covered = coveredCells(sizeMm, onSheet, grid);
  const maps = changeMaps(painted, sizeMm, covered);
  const zones = sources.zones.map((zone) => truthZone(zone, painted, sizeMm, covered));
  const { verdict, warnings } = sources;
  return {
    truth: { verdict, warnings, grid, zones, areas: maps.areas, inkReflectance: sheetBody.ink },
    maps,
  };
}

function sampleGrid(sizeMm: Point, count: number): Point[] {
  return Array.from({ length: count * count }, (_, i) => [
    ((i % count) / (count - 1)) * sizeMm[0],
    (Math.floor(i / count) / (count - 1)) * sizeMm[1],
  ]);
}

/** Which cells of the truth maps the sheet covered: 1 or 0. Quick where the whole grid lies on the sheet. */
function coveredCells(sizeMm: Point, onSheet: (stoneMm: Point) => boolean, grid: readonly TruthSample[]) {
  const columns = Math.round(sizeMm[0] * truthCellsPerMm);
  const rows = Math.round(sizeMm[1] * truthCellsPerMm);
  const covered = new Uint8Array(columns * rows).fill(1);
  if (grid.every((sample) => sample.onSheet)) return covered;
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      covered[row * columns + column] = Number(
        onSheet([(column + 0.5) / truthCellsPerMm, (row + 0.5) / truthCellsPerMm]),
      );
  return covered;
}

function truthZone(zone: Zone, painted: PaintedPair, sizeMm: Point, covered: Uint8Array): TruthZone {
  const { stone, print } = painted;
  const columns = Math.round(sizeMm[0] * truthCellsPerMm);
  const rows = Math.round(sizeMm[1] * truthCellsPerMm);
  const cellAt = (cell: number, raster: CoverageRaster, axis: 0 | 1, most: number) =>
    Math.min(
      most - 1,
      Math.max(0, Math.floor(((cell + 0.5) / raster.cellsPerMm + raster.originMm[axis]) * truthCellsPerMm)),
    );
  let all = 0;
  let seen = 0;
  let drawnSum = 0;
  let drawnSeen = 0;
  let printedSum = 0;
  rowSpans(zone.polygonMm, stone, (row, from, to) => {
    const mapRow = cellAt(row, stone, 1, rows) * columns;
    for (let column = from; column < to; column++) {
      const cell = row * stone.columns + column;
      all++;
      drawnSum += stone.data[cell]!;
      if (covered[mapRow + cellAt(column, stone, 0, columns)] === 0) continue;
      seen++;
      drawnSeen += stone.data[cell]!;
      printedSum += print.data[cell]!;
    }
  });
  const visible = seen / all;
  const printed = visible < 0.05 ? null : printedSum / seen / 255;
  return {
    id: zone.id,
    drawn: drawnSum / all / 255,
    printed,
    visible,
    change: printed === null || visible < 0.98 ? null : sureChange(drawnSeen / seen / 255, printed),
  };
}

/** The change by limits narrower than the tool's, so that a right tool cannot disagree. */
function sureChange(drawn: number, printed: number): TruthZone['change'] {
  if (drawn >= 0.12 && printed <= 0.3 * drawn) return 'lost';
  if (drawn >= 0.12 && drawn <= 0.82 && printed >= 0.95) return 'filled';
  if (drawn <= 0.01 && printed >= 0.06) return 'scum';
  const shift = printed - drawn;
  if (Math.abs(shift) <= 0.03 && !(drawn <= 0.03 && printed >= 0.03)) return 'held';
  if (shift >= 0.09 && printed <= 0.9 && drawn >= 0.04) return 'darker';
  if (shift <= -0.09 && printed >= 0.5 * drawn) return 'lighter';
  return null;
}
