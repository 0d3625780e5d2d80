import type { PatchGrid, StonePatch } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { squareName, stepOf } from '../places/patchName.ts';

/** Bare stone left between the steps of one square, mm: a brush can't stop nearer. Our rule. */
const stepGapMm = 1;

/**
 * The patches of a grid by rows from the top left, each called by its row and place. One that stood there before keeps its id,
 * intention, treatment and note; its outline is laid anew.
 */
export function layGrid(grid: PatchGrid, before: readonly StonePatch[] = []): StonePatch[] {
  const placeOf = (row: number | null, column: number | null, step: number | null) =>
    `${row} ${column} ${step}`;
  const kept = new Map(
    before
      .filter(({ row }) => row !== null)
      .map((patch) => [placeOf(patch.row, patch.column, stepOf(patch.id)), patch]),
  );
  const patches: StonePatch[] = [];
  for (let row = 0; row < grid.rows; row++)
    for (let column = 0; column < grid.columns; column++)
      for (let step = 0; step < grid.steps; step++) {
        const nth = grid.steps === 1 ? null : step + 1;
        const old = kept.get(placeOf(row + 1, column + 1, nth));
        patches.push({
          id: old?.id ?? squareName(row + 1, column + 1, nth),
          square: old?.square ?? squareName(row + 1, column + 1),
          strip: old ? old.strip : null,
          row: row + 1,
          column: column + 1,
          polygonMm: stepOutline(grid, row, column, step),
          intention: old?.intention ?? 'image',
          treatment: old?.treatment ?? {},
          note: old?.note ?? '',
        });
      }
  return patches;
}

function stepOutline(grid: PatchGrid, row: number, column: number, step: number): Point[] {
  const { squareMm, gutterMm, steps } = grid;
  const width = (squareMm[0] - (steps - 1) * stepGapMm) / steps;
  const left = column * (squareMm[0] + gutterMm[0]) + step * (width + stepGapMm);
  const top = row * (squareMm[1] + gutterMm[1]);
  const corners: Point[] = [
    [left, top],
    [left + width, top],
    [left + width, top + squareMm[1]],
    [left, top + squareMm[1]],
  ];
  return corners.map((corner) => placed(grid, corner));
}

function placed({ originMm, turnDegrees }: PatchGrid, [x, y]: Point): Point {
  const turn = (turnDegrees * Math.PI) / 180;
  const [sine, cosine] = [Math.sin(turn), Math.cos(turn)];
  // to the hundredth of a mm: finer is no place on a stone
  const round = (value: number) => Math.round(value * 100) / 100;
  return [round(originMm[0] + x * cosine - y * sine), round(originMm[1] + x * sine + y * cosine)];
}
