import type { AttachedPhotograph } from '../../records/attachedPhotograph.ts';
import type { WorkRectangle } from '../../records/work.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { type LinkedView, toScreenPx } from './linkedView.ts';
import { matrix3d, projective } from './straightened.ts';
import { levelFor, type TilePlace, tilesIn } from './tilePyramid.ts';

/** A photograph laid on the stone: which px of it show in a window, and how it is laid. */
export interface LaidPhotograph {
  /** CSS `matrix3d(…)` from photograph px to screen px, with transform-origin at the top left. */
  readonly transform: string;
  /** The tiles to show, coarse ones first. */
  readonly tiles: readonly TilePlace[];
}

/** Where the marks of a photograph lie on the stone: its corners, or those of the work rectangle. null: not known. */
export function markedPlace(
  corners: AttachedPhotograph['corners'],
  stoneMm: Point,
  rectangle: WorkRectangle | null,
): { readonly px: Corners; readonly mm: Corners } | null {
  if (!corners || (corners.of === 'rectangle' && !rectangle)) return null;
  const [x, y] = corners.of === 'rectangle' ? rectangle!.offsetMm : [0, 0];
  const [width, height] = corners.of === 'rectangle' ? rectangle!.sizeMm : stoneMm;
  return {
    px: corners.px,
    mm: [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
  };
}

/**
 * Lays a photograph under a view of the stone by its four marks, with the tiles that the view shows.
 * Returns null where the marks lie on one line.
 */
export function layPhotograph(
  sizePx: Point,
  marked: { readonly px: Corners; readonly mm: Corners },
  view: LinkedView,
  areaPx: Point,
): LaidPhotograph | null {
  const onScreen = marked.mm.map((point) => toScreenPx(view, point)) as unknown as Corners;
  const map = projective(marked.px, onScreen);
  const back = projective(onScreen, marked.px);
  if (!map || !back) return null;
  const seen = [
    [0, 0],
    [areaPx[0], 0],
    [areaPx[0], areaPx[1]],
    [0, areaPx[1]],
  ].map((corner) => mapped(back, corner as unknown as Point));
  const from: Point = [Math.min(...seen.map(([x]) => x)), Math.min(...seen.map(([, y]) => y))];
  const to: Point = [Math.max(...seen.map(([x]) => x)), Math.max(...seen.map(([, y]) => y))];
  const shownPx = Math.hypot(onScreen[2][0] - onScreen[0][0], onScreen[2][1] - onScreen[0][1]);
  const photographPx = Math.hypot(marked.px[2][0] - marked.px[0][0], marked.px[2][1] - marked.px[0][1]);
  const level = levelFor(sizePx[0], sizePx[1], shownPx / Math.max(photographPx, 1));
  const coarse = Math.max(level - 2, 0);
  const tiles = [...new Set([coarse, level])].flatMap((at) => tilesIn(sizePx[0], sizePx[1], at, from, to));
  return { transform: matrix3d(map), tiles };
}

function mapped(map: readonly number[], [x, y]: Point): Point {
  const [a, b, c, d, e, f, g, h] = map as [number, number, number, number, number, number, number, number];
  const depth = g * x + h * y + 1;
  return [(a * x + b * y + c) / depth, (d * x + e * y + f) / depth];
}
