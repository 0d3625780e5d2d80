import type { Point } from '../../science/geometry/point.ts';
import { say } from '../words/say.ts';
import { type LinkedView, type PlaceMm, toScreenPx } from './linkedView.ts';

/** How far the sheet has been lifted off the stone from its left edge: 0 lies flat, 1 is off. */
export type Lift = number;

/** The lifted sheet as it is drawn, all in screen px. */
export interface LiftedSheet {
  /** The line along which the sheet leaves the stone, top and bottom end. */
  readonly foldTopPx: Point;
  readonly foldBottomPx: Point;
  /** How wide the rolled edge is. */
  readonly rollPx: number;
  /** Outline of the part that still lies on the stone. */
  readonly lyingPx: readonly Point[];
  /** Whether anything of the sheet is left to draw. */
  readonly gone: boolean;
}

/** A lift kept within 0..1. */
export function heldLift(lift: Lift): Lift {
  return Math.min(Math.max(lift, 0), 1);
}

/**
 * Where fold and roll of a sheet come to lie. The fold leans as an edge does that is pulled at its upper corner,
 * most when half off; the roll grows with what has been rolled up.
 */
export function liftedSheet(view: LinkedView, sheetMm: PlaceMm, lift: Lift): LiftedSheet {
  const [left, top] = toScreenPx(view, sheetMm.min);
  const [right, bottom] = toScreenPx(view, sheetMm.max);
  const height = bottom - top;
  const lean = Math.min(height * 0.06, 48) * Math.sin(Math.PI * heldLift(lift));
  const rollPx = lift <= 0 ? 10 : 18 + 34 * Math.sqrt(heldLift(lift)) * Math.min(1, (right - left) / 700);
  const foldX = left + (right - left) * heldLift(lift);
  const foldTopPx: Point = [foldX + lean, top];
  const foldBottomPx: Point = [foldX - lean, bottom];
  return {
    foldTopPx,
    foldBottomPx,
    rollPx,
    lyingPx: [foldTopPx, [right, top], [right, bottom], foldBottomPx],
    gone: lift >= 1,
  };
}

/** The lift that brings the roll under a pointer at `screenPx`, given where on the roll it was taken hold of. */
export function liftAt(view: LinkedView, sheetMm: PlaceMm, screenPx: Point, heldOffPx: number): Lift {
  const [left] = toScreenPx(view, sheetMm.min);
  const [right] = toScreenPx(view, sheetMm.max);
  return heldLift((screenPx[0] - heldOffPx - left) / Math.max(right - left, 1));
}

/** How far right of the fold's middle a pointer is, when it is near enough to take the sheet's edge; null otherwise. */
export function gripOff(sheet: LiftedSheet, screenPx: Point): number | null {
  const span = sheet.foldBottomPx[1] - sheet.foldTopPx[1];
  const down = (screenPx[1] - sheet.foldTopPx[1]) / Math.max(span, 1);
  if (down < -0.05 || down > 1.05) return null;
  const foldX = sheet.foldTopPx[0] + (sheet.foldBottomPx[0] - sheet.foldTopPx[0]) * down;
  const off = screenPx[0] - foldX;
  return off > -26 && off < sheet.rollPx + 26
    ? screenPx[0] - (sheet.foldTopPx[0] + sheet.foldBottomPx[0]) / 2
    : null;
}

/** The next lift for a key, or null where the key lifts nothing. Arrows 2 %, by page 10 %. */
export function liftByKey(lift: Lift, key: string): Lift | null {
  const step = 0.02;
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return heldLift(lift + step);
    case 'ArrowLeft':
    case 'ArrowDown':
      return heldLift(lift - step);
    case 'PageUp':
      return heldLift(lift + 0.1);
    case 'PageDown':
      return heldLift(lift - 0.1);
    case 'Home':
      return 0;
    case 'End':
      return 1;
    default:
      return null;
  }
}

/** The lift in words, for those who do not see it. */
export function liftWords(lift: Lift): string {
  if (lift <= 0) return say('The print lies flat on the stone');
  if (lift >= 1) return say('The print is off; the whole stone shows');
  return say('The print is lifted {lift} % from the left', { lift: Math.round(lift * 100) });
}
