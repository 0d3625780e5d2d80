import type { Point } from '../../science/geometry/point.ts';
import { say } from '../words/say.ts';

/** A grey chip on a photograph as it is being set. Photograph px. */
export interface TypedChip {
  readonly name: string;
  readonly polygonPx: readonly Point[];
  /** Known density above a perfect white, D; null until typed. */
  readonly density: number | null;
}

/** An upright box round an outline, px. */
interface ChipBox {
  readonly from: Point;
  readonly to: Point;
}

/** Smaller is no chip but a slip of the hand, px of the photograph. Our rule. */
const leastPx = 4;
/** The first box is this share of the photograph's width: a chip on a card beside a print. Our rule. */
const firstShare = 0.02;

/** The share of the light that a chip of so much density throws back: `10^−D`. */
export function reflectanceOf(density: number): number {
  return 10 ** -density;
}

/** The density of a chip that throws back so much of the light, to thousandths. */
export function densityOf(reflectance: number): number {
  return Math.round(-Math.log10(reflectance) * 1000) / 1000 || 0;
}

/** The box round an outline. */
export function boxOf(polygonPx: readonly Point[]): ChipBox {
  const xs = polygonPx.map(([x]) => x);
  const ys = polygonPx.map(([, y]) => y);
  return { from: [Math.min(...xs), Math.min(...ys)], to: [Math.max(...xs), Math.max(...ys)] };
}

/** A box between two places in any order, kept on the photograph; null where it is too small to be meant. */
export function drawnBox(a: Point, b: Point, sizePx: Point): readonly Point[] | null {
  const [left, right] = ordered(a[0], b[0], sizePx[0]);
  const [top, bottom] = ordered(a[1], b[1], sizePx[1]);
  if (right - left < leastPx || bottom - top < leastPx) return null;
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

/** The box that a press puts at a place: as large as the last chip, else a small share of the photograph. */
export function pressedBox(
  atPx: Point,
  chips: readonly Pick<TypedChip, 'polygonPx'>[],
  sizePx: Point,
): readonly Point[] {
  const like = chips.at(-1);
  const { from, to } = like
    ? boxOf(like.polygonPx)
    : { from: [0, 0], to: [firstShare * sizePx[0], firstShare * sizePx[0]] };
  const half: Point = [(to[0]! - from[0]!) / 2, (to[1]! - from[1]!) / 2];
  const box = drawnBox([0, 0], [half[0] * 2, half[1] * 2], sizePx)!;
  return movedChip(box, [atPx[0] - half[0], atPx[1] - half[1]], sizePx);
}

/** The chip about its middle, so many times as large; itself where that would leave nothing of it. */
export function scaledChip(polygonPx: readonly Point[], times: number, sizePx: Point): readonly Point[] {
  const { from, to } = boxOf(polygonPx);
  const grow = (axis: 0 | 1) => ((to[axis] - from[axis]) * (times - 1)) / 2;
  const [x, y] = [grow(0), grow(1)];
  return drawnBox([from[0] - x, from[1] - y], [to[0] + x, to[1] + y], sizePx) ?? polygonPx;
}

/** The outline moved whole, and no farther than the photograph's edge. */
export function movedChip(polygonPx: readonly Point[], byPx: Point, sizePx: Point): readonly Point[] {
  const { from, to } = boxOf(polygonPx);
  const kept = (by: number, axis: 0 | 1) => Math.min(Math.max(by, -from[axis]), sizePx[axis] - to[axis]);
  const [x, y] = [kept(byPx[0], 0), kept(byPx[1], 1)];
  return polygonPx.map(([px, py]): Point => [tenth(px + x), tenth(py + y)]);
}

/** The chip as a box whose far corner is moved by so much; itself where that would leave nothing of it. */
export function resizedChip(polygonPx: readonly Point[], byPx: Point, sizePx: Point): readonly Point[] {
  const { from, to } = boxOf(polygonPx);
  const far: Point = [to[0] + byPx[0], to[1] + byPx[1]];
  if (far[0] - from[0] < leastPx || far[1] - from[1] < leastPx) return polygonPx;
  return drawnBox(from, far, sizePx) ?? polygonPx;
}

/** Where the next chip of a row would lie: as far from the last as that is from the one before; null without any. */
export function nextInRow(
  chips: readonly Pick<TypedChip, 'polygonPx'>[],
  sizePx: Point,
): readonly Point[] | null {
  const last = chips.at(-1);
  if (!last) return null;
  const { from, to } = boxOf(last.polygonPx);
  const before = chips.at(-2);
  const step: Point = before
    ? [from[0] - boxOf(before.polygonPx).from[0], from[1] - boxOf(before.polygonPx).from[1]]
    : [(to[0] - from[0]) * 1.4, 0];
  return movedChip(last.polygonPx, step, sizePx);
}

/** Where the corner mark of the chip in hand lies: past its far corner, both ways, and how near to it counts. Photograph px. */
interface ChipCorner {
  readonly index: number;
  readonly awayPx: number;
  readonly reachPx: number;
}

/** The chip under a place: its inside, or the corner mark of the one in hand; null where there is none. */
export function chipAt(
  chips: readonly Pick<TypedChip, 'polygonPx'>[],
  atPx: Point,
  corner: ChipCorner | null,
): { readonly index: number; readonly part: 'corner' | 'inside' } | null {
  const held = corner && chips[corner.index];
  if (held) {
    const { to } = boxOf(held.polygonPx);
    const far = Math.hypot(to[0] + corner.awayPx - atPx[0], to[1] + corner.awayPx - atPx[1]);
    if (far <= corner.reachPx) return { index: corner.index, part: 'corner' };
  }
  const index = chips.findLastIndex(({ polygonPx }) => {
    const { from, to } = boxOf(polygonPx);
    return atPx[0] >= from[0] && atPx[0] <= to[0] && atPx[1] >= from[1] && atPx[1] <= to[1];
  });
  return index < 0 ? null : { index, part: 'inside' };
}

/** What keeps chips from being used; null when nothing does. */
export function chipsTrouble(chips: readonly TypedChip[]): string | null {
  const missing = chips.findIndex(({ density }) => density === null);
  return missing < 0
    ? null
    : say('Chip {missing} has no density yet: type it, or take the chip away.', { missing: missing + 1 });
}

function ordered(a: number, b: number, size: number): readonly [number, number] {
  const kept = (value: number) => tenth(Math.min(Math.max(value, 0), size));
  return a < b ? [kept(a), kept(b)] : [kept(b), kept(a)];
}

function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
