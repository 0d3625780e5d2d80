import type { Point } from '../../science/geometry/point.ts';
import { type LinkedView, toScreenPx } from './linkedView.ts';
import type { LiftedSheet } from './sheetLift.ts';

/** Lets what is painted next show only inside an outline. */
export function clipTo(context: CanvasRenderingContext2D, outlinePx: readonly Point[]): void {
  context.beginPath();
  for (const [x, y] of outlinePx) context.lineTo(x, y);
  context.closePath();
  context.clip();
}

/** The shadow that the lifted edge throws on the stone. */
export function castShadow(context: CanvasRenderingContext2D, sheet: LiftedSheet): void {
  const reach = sheet.rollPx * 1.5;
  const [topX, top] = sheet.foldTopPx;
  const [bottomX, bottom] = sheet.foldBottomPx;
  // Across the fold, so that the shadow leans with it.
  const length = Math.hypot(bottomX - topX, bottom - top) || 1;
  const across: Point = [(bottom - top) / length, (topX - bottomX) / length];
  const shade = context.createLinearGradient(topX, top, topX - across[0] * reach, top - across[1] * reach);
  shade.addColorStop(0, 'rgba(20, 14, 8, 0.55)');
  shade.addColorStop(1, 'rgba(20, 14, 8, 0)');
  context.fillStyle = shade;
  context.beginPath();
  context.moveTo(topX + 2, top);
  context.lineTo(topX - reach, top);
  context.lineTo(bottomX - reach, bottom);
  context.lineTo(bottomX + 2, bottom);
  context.fill();
}

/** The rolled edge: the back of the paper, with the print showing through a little. */
export function rollEdge(
  context: CanvasRenderingContext2D,
  sheet: LiftedSheet,
  printed: CanvasImageSource,
  sizeMm: Point,
  view: LinkedView,
): void {
  const [topX, top] = sheet.foldTopPx;
  const [bottomX, bottom] = sheet.foldBottomPx;
  const roll = sheet.rollPx;
  const span = bottom - top;
  context.save();
  // A soft shade on the sheet behind the roll.
  const behind = context.createLinearGradient(topX + roll, 0, topX + roll * 1.9, 0);
  behind.addColorStop(0, 'rgba(20, 14, 8, 0.28)');
  behind.addColorStop(1, 'rgba(20, 14, 8, 0)');
  context.save();
  clipTo(context, sheet.lyingPx);
  context.transform(1, 0, (bottomX - topX) / span, 1, (-(bottomX - topX) / span) * top, 0);
  context.fillStyle = behind;
  context.fillRect(topX + roll * 0.8, top, roll * 1.2, span);
  context.restore();

  context.beginPath();
  context.moveTo(topX, top - 4);
  context.bezierCurveTo(
    topX + roll * 0.3,
    top + span * 0.25,
    bottomX + roll * 0.42,
    top + span * 0.65,
    bottomX,
    bottom + 3,
  );
  context.lineTo(bottomX + roll * 0.82, bottom + 5);
  context.bezierCurveTo(
    bottomX + roll * 1.35,
    top + span * 0.66,
    topX + roll * 1.2,
    top + span * 0.24,
    topX + roll * 0.9,
    top - 5,
  );
  context.closePath();
  context.clip();
  const across = context.createLinearGradient(0, 0, roll * 1.15, 0);
  across.addColorStop(0, '#ffffff');
  across.addColorStop(0.5, '#efeade');
  across.addColorStop(0.82, '#cdc5b5');
  across.addColorStop(1, '#a79f90');
  context.transform(1, 0, (bottomX - topX) / span, 1, topX - ((bottomX - topX) / span) * top, 0);
  context.fillStyle = across;
  context.fillRect(-roll * 0.3, top - 8, roll * 2, span + 16);
  // What is printed shows faintly through the back, the other way round.
  context.globalAlpha = 0.1;
  const [x, y] = toScreenPx(view, [0, 0]);
  context.scale(-1, 1);
  context.drawImage(printed, x - topX - roll, y, sizeMm[0] * view.pxPerMm, sizeMm[1] * view.pxPerMm);
  context.restore();
}
