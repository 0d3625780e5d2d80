import type { PatchGrid, StonePatch } from '../../../records/testStone.ts';
import type { Point } from '../../../science/geometry/point.ts';

/** Bare stone left between the steps of one square, mm: a brush can't stop nearer. Our rule. */
const stepGapMm = 1;

/** `A`, `B` … `Z`, `AA`: rows by letters, as squares are lettered by hand. @param index from 0. */
export function rowLetters(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : rowLetters(Math.floor(index / 26) - 1) + letter;
}

/**
 * The patches of a grid by rows from the top left: `A1`, `A2` … or, with steps, `A1.1`, `A1.2` … A patch that was there
 * before under its id keeps intention, treatment and note; its outline is laid anew.
 */
export function layGrid(grid: PatchGrid, before: readonly StonePatch[] = []): StonePatch[] {
  const kept = new Map(before.map((patch) => [patch.id, patch]));
  const patches: StonePatch[] = [];
  for (let row = 0; row < grid.rows; row++)
    for (let column = 0; column < grid.columns; column++)
      for (let step = 0; step < grid.steps; step++) {
        const square = `${rowLetters(row)}${column + 1}`;
        const id = grid.steps === 1 ? square : `${square}.${step + 1}`;
        const old = kept.get(id);
        patches.push({
          id,
          square,
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
