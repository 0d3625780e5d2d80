import type { FeatureReading } from '../../records/suspects.ts';
import { bareUpTo, cellMm } from './evidenceGrid.ts';
import { mean, standardError } from './means.ts';
import { cellsOf, type PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

const darkFrom = 0.7;
const nearMm = 7;
const farMm = 13;
/** Softer tones than this can show that they lost something. */
const haloTones = [0.07, 0.62] as const;
const fewestCells = 20;
const fewestTailCells = 12;
const sides = ['right', 'below', 'left', 'above'] as const;

/**
 * What lies beside dark work. `haloBesideDarks`: by which share lighter work is paler within 7 mm of darks than far from them.
 * `tailsOffDarks`: how much more bare stone prints on one side of darks than on the other.
 */
export function besideDarks(
  { grid, left, expected }: PulledTone,
  nearest: NearestDark,
): {
  haloBesideDarks: FeatureReading | null;
  tailsOffDarks: FeatureReading | null;
} {
  const halo = { near: [] as number[], far: [] as number[] };
  const losses = sides.map(() => [] as number[]);
  const tails = sides.map(() => [] as number[]);
  for (let cell = 0; cell < left.length; cell++) {
    const { distance, side } = nearest(cell);
    const drawn = grid.drawn[cell]!;
    if (drawn <= bareUpTo && !grid.outline[cell] && distance * cellMm < nearMm + 3 && side >= 0) {
      if (!Number.isNaN(grid.printed[cell]!) && !atBorder(grid, cell)) tails[side]!.push(grid.printed[cell]!);
      continue;
    }
    const tone = expected.cells[cell]!;
    if (Number.isNaN(left[cell]!) || tone < haloTones[0] || tone > haloTones[1]) continue;
    if (distance * cellMm < nearMm) {
      halo.near.push(left[cell]!);
      if (side >= 0) losses[side]!.push(left[cell]!);
    } else if (distance * cellMm > farMm) halo.far.push(left[cell]!);
  }
  return { haloBesideDarks: haloOf(halo, losses), tailsOffDarks: tailsOf(tails) };
}

/** The border may be grey for reasons of its own. */
function atBorder({ columns, rows }: PulledTone['grid'], cell: number): boolean {
  const [column, row] = [cell % columns, Math.floor(cell / columns)];
  return Math.min(column, row, columns - 1 - column, rows - 1 - row) < cellsOf(12);
}

function haloOf(halo: { near: number[]; far: number[] }, losses: readonly number[][]): FeatureReading | null {
  if (halo.near.length < fewestCells || halo.far.length < fewestCells) return null;
  const by = losses.map((values) => (values.length < 8 ? Number.NaN : -mean(values)));
  const most = by.reduce((best, value, i) => (value > (by[best] ?? -Infinity) ? i : best), 0);
  const rest = by.filter((value, i) => i !== most && !Number.isNaN(value));
  const oneSided = rest.length > 0 && by[most]! > 2 * Math.max(0.02, mean(rest));
  const round = mean(halo.far) - mean(halo.near);
  return reading(
    oneSided ? Math.max(round, 0.8 * (by[most]! + mean(halo.far))) : round,
    Math.hypot(standardError(halo.near), standardError(halo.far)),
    oneSided ? `mostly ${sides[most]} of the darks` : 'all round the darks',
  );
}

function tailsOf(tails: readonly number[][]): FeatureReading | null {
  let best: FeatureReading | null = null;
  for (let side = 0; side < 4; side++) {
    const own = tails[side]!;
    const opposite = tails[(side + 2) % 4]!;
    // Where nothing bare lies opposite, the other sides tell what bare stone beside darks prints.
    const other = opposite.length >= fewestTailCells ? opposite : tails.filter((_, i) => i !== side).flat();
    if (own.length < fewestTailCells || other.length < fewestTailCells) continue;
    const more = mean(own) - mean(other);
    if (best === null || more > best.value)
      best = reading(
        more,
        Math.hypot(standardError(own), standardError(other), 0.003),
        `${sides[side]} of the darks`,
      );
  }
  return best;
}

/** 1 for cells in which lighter work may have suffered from darks beside it. */
export function besideDark(grid: PulledTone['grid'], nearest: NearestDark, mm = nearMm): Uint8Array {
  return Uint8Array.from(grid.drawn, (drawn, cell) => {
    const { distance } = nearest(cell);
    return drawn < haloTones[1] && distance > 0 && distance * cellMm < mm ? 1 : 0;
  });
}

/** Distance in cells to the nearest dark cell, and on which side of it the cell lies (index into `sides`; −1 aslant). */
export type NearestDark = (cell: number) => { readonly distance: number; readonly side: number };

/** The nearest dark of every cell, as far as anything is looked for beside darks. */
export function nearestDark({ columns, rows, drawn }: PulledTone['grid']): NearestDark {
  const reach = cellsOf(farMm);
  const distance = new Float32Array(drawn.length).fill(Infinity);
  const from = new Int32Array(drawn.length).fill(-1);
  for (let dark = 0; dark < drawn.length; dark++) {
    if (!(drawn[dark]! >= darkFrom)) continue;
    const [x, y] = [dark % columns, Math.floor(dark / columns)];
    const inner = [dark - 1, dark + 1, dark - columns, dark + columns].every(
      (cell) => drawn[cell]! >= darkFrom,
    );
    if (inner) {
      distance[dark] = 0;
      continue;
    }
    for (let row = Math.max(0, y - reach); row <= Math.min(rows - 1, y + reach); row++)
      for (let column = Math.max(0, x - reach); column <= Math.min(columns - 1, x + reach); column++) {
        const away = Math.sqrt((column - x) ** 2 + (row - y) ** 2);
        const cell = row * columns + column;
        if (away < distance[cell]!) {
          distance[cell] = away;
          from[cell] = dark;
        }
      }
  }
  return (cell) => {
    const dark = from[cell]!;
    if (dark < 0) return { distance: distance[cell]!, side: -1 };
    const dx = (cell % columns) - (dark % columns);
    const dy = Math.floor(cell / columns) - Math.floor(dark / columns);
    if (Math.abs(dx) > 1.5 * Math.abs(dy)) return { distance: distance[cell]!, side: dx > 0 ? 0 : 2 };
    if (Math.abs(dy) > 1.5 * Math.abs(dx)) return { distance: distance[cell]!, side: dy > 0 ? 1 : 3 };
    return { distance: distance[cell]!, side: -1 };
  };
}
