import type { Point } from '../../science/geometry/point.ts';

export const tilePx = 512;

/** One tile and the part of the photograph that it shows. */
export interface TilePlace {
  readonly level: number;
  readonly column: number;
  readonly row: number;
  /** Top left and size in full-size photograph px. */
  readonly fromPx: Point;
  readonly sizePx: Point;
}

/** The level that holds a photograph at full size: ceil(log2 of its longer side). Each level below halves it. */
export function fullLevel(widthPx: number, heightPx: number): number {
  return Math.ceil(Math.log2(Math.max(widthPx, heightPx, 1)));
}

/** The lowest level that is still sharp when one photograph px covers `screenPxPerPx` px of the screen. */
export function levelFor(widthPx: number, heightPx: number, screenPxPerPx: number): number {
  const full = fullLevel(widthPx, heightPx);
  return Math.min(full, Math.max(0, full + Math.ceil(Math.log2(Math.max(screenPxPerPx, 1e-6)))));
}

/**
 * The tiles of one level that touch a window of the photograph, row by row.
 * Window in full-size px; parts outside the photograph have no tiles. Tiles are 512 px with no overlap.
 */
export function tilesIn(
  widthPx: number,
  heightPx: number,
  level: number,
  fromPx: Point,
  toPx: Point,
): TilePlace[] {
  const shrink = 2 ** (fullLevel(widthPx, heightPx) - level);
  const span = tilePx * shrink;
  const columns = Math.ceil(Math.ceil(widthPx / shrink) / tilePx);
  const rows = Math.ceil(Math.ceil(heightPx / shrink) / tilePx);
  const tiles: TilePlace[] = [];
  for (let row = Math.max(0, Math.floor(fromPx[1] / span)); row < rows && row * span < toPx[1]; row++)
    for (
      let column = Math.max(0, Math.floor(fromPx[0] / span));
      column < columns && column * span < toPx[0];
      column++
    )
      tiles.push({
        level,
        column,
        row,
        fromPx: [column * span, row * span],
        sizePx: [Math.min(span, widthPx - column * span), Math.min(span, heightPx - row * span)],
      });
  return tiles;
}
