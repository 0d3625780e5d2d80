import type { Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import { median } from '../../science/statistics/quantile.ts';
import { cellKind } from './bareCells.ts';
import { cellKinds } from './cellKinds.ts';
import type { SideTone } from './readSide.ts';

/** The even tone of what should be bare, with its standard deviation; or why it can't be told. */
export type BareReading =
  | { readonly darkness: number; readonly deviation: number; readonly why: null }
  | { readonly darkness: null; readonly deviation: null; readonly why: string };

/** Fewer cells of a square millimetre than this say nothing of a sheet: our rule. */
const leastCells = 100;
/** What the unknown bend of a camera's own contrast curve does to a middle tone when no chips tell it. */
const standardCurveDoubt = 0.007;
/** Two readings of one sheet differ by about this, before repeats of the room say otherwise. */
const floor = 0.003;

/**
 * How dark the paper is where nothing was drawn: the median over square millimetres outside all zones, so that a stray mark
 * doesn't decide. An even tint can only be told against paper outside the work rectangle, or a white sheet.
 */
export function readBare(side: SideTone, zones: readonly Zone[], sizeMm: Point): BareReading {
  const unknown = (why: string): BareReading => ({ darkness: null, deviation: null, why });
  const { origin } = side.groundRecord;
  if (origin !== 'outside' && origin !== 'white-sheet') {
    return unknown(
      'Can’t tell: no clean paper shows outside the work rectangle, and an even tint over all of the print looks like its paper. Show paper all round, or photograph a blank white sheet too.',
    );
  }
  if (zones.length === 0)
    return unknown('Can’t tell: no zones are drawn, so that it is not known what should be bare.');
  const { frame, ground, darkness, counts } = side;
  const { grid } = ground;
  const kinds = cellKinds(grid, frame, sizeMm, zones);
  const levels: number[] = [];
  let squares = 0;
  for (let cell = 0; cell < kinds.length; cell++) {
    if (kinds[cell] !== cellKind.expectedBare) continue;
    const level = cellLevel(cell % grid.columns, Math.floor(cell / grid.columns));
    if (level === null) continue;
    levels.push(level);
    squares += ground.error[cell]! ** 2;
  }
  if (levels.length < leastCells) return unknown('Can’t tell: hardly any bare place lies on the sheet.');
  const value = median(levels);
  const response = side.response.origin === 'chips' ? 0.001 : 4 * value * (1 - value) * standardCurveDoubt;
  return {
    darkness: value,
    deviation: Math.hypot(Math.sqrt(squares / levels.length), response, floor),
    why: null,
  };

  /** Mean of a cell that lies wholly on the sheet. */
  function cellLevel(column: number, row: number): number | null {
    let sum = 0;
    for (let dy = 0; dy < grid.cellPx; dy++) {
      for (let dx = 0; dx < grid.cellPx; dx++) {
        const i = (row * grid.cellPx + dy) * frame.widthPx + column * grid.cellPx + dx;
        if (!counts[i] || Number.isNaN(darkness[i]!)) return null;
        sum += darkness[i]!;
      }
    }
    return sum / grid.cellPx ** 2;
  }
}
