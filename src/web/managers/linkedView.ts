import type { Point } from '../../science/geometry/point.ts';

/** What part of the stone a screen area shows: `screenPx = stoneMm * pxPerMm + offsetPx`. One view for stone and print alike. */
export interface LinkedView {
  readonly pxPerMm: number;
  readonly offsetPx: Point;
}

/** A rectangle on the stone. */
export interface PlaceMm {
  readonly min: Point;
  readonly max: Point;
}

const closest = 40;

/** The view that shows `place` whole in the middle of an area of `areaPx`, with `marginPx` kept free all round. */
export function viewOnPlace(place: PlaceMm, areaPx: Point, marginPx: number): LinkedView {
  const width = Math.max(place.max[0] - place.min[0], 1);
  const height = Math.max(place.max[1] - place.min[1], 1);
  const room: Point = [Math.max(areaPx[0] - 2 * marginPx, 40), Math.max(areaPx[1] - 2 * marginPx, 40)];
  const pxPerMm = Math.min(room[0] / width, room[1] / height, closest);
  return {
    pxPerMm,
    offsetPx: [
      areaPx[0] / 2 - (pxPerMm * (place.min[0] + place.max[0])) / 2,
      areaPx[1] / 2 - (pxPerMm * (place.min[1] + place.max[1])) / 2,
    ],
  };
}

/** The view that shows the whole work rectangle. */
export function wholeView(sizeMm: Point, areaPx: Point, marginPx: number): LinkedView {
  return viewOnPlace({ min: [0, 0], max: sizeMm }, areaPx, marginPx);
}

/** Closer (factor above 1) or farther, with the stone under `aboutPx` staying where it is; never farther than half of whole. */
export function zoomAbout(view: LinkedView, factor: number, aboutPx: Point, whole: LinkedView): LinkedView {
  const pxPerMm = Math.min(Math.max(view.pxPerMm * factor, whole.pxPerMm * 0.5), closest);
  const kept = pxPerMm / view.pxPerMm;
  return {
    pxPerMm,
    offsetPx: [
      aboutPx[0] - (aboutPx[0] - view.offsetPx[0]) * kept,
      aboutPx[1] - (aboutPx[1] - view.offsetPx[1]) * kept,
    ],
  };
}

/** The view pushed by `byPx`, held so that a part of the stone at least 60 px wide stays in sight. */
export function panBy(view: LinkedView, byPx: Point, sizeMm: Point, areaPx: Point): LinkedView {
  const kept = 60;
  const hold = (offset: number, size: number, area: number) =>
    Math.min(Math.max(offset, kept - size * view.pxPerMm), area - kept);
  return {
    pxPerMm: view.pxPerMm,
    offsetPx: [
      hold(view.offsetPx[0] + byPx[0], sizeMm[0], areaPx[0]),
      hold(view.offsetPx[1] + byPx[1], sizeMm[1], areaPx[1]),
    ],
  };
}

/** Where a place on the stone is on screen. */
export function toScreenPx(view: LinkedView, stoneMm: Point): Point {
  return [stoneMm[0] * view.pxPerMm + view.offsetPx[0], stoneMm[1] * view.pxPerMm + view.offsetPx[1]];
}

/** Which place on the stone is under a place on screen. */
export function toStoneMm(view: LinkedView, screenPx: Point): Point {
  return [(screenPx[0] - view.offsetPx[0]) / view.pxPerMm, (screenPx[1] - view.offsetPx[1]) / view.pxPerMm];
}

/** A view between two, for moving there; `share` 0 gives `from`, 1 gives `to`. Scale moves evenly in ratio. */
export function viewBetween(from: LinkedView, to: LinkedView, share: number): LinkedView {
  if (share >= 1) return to;
  const ratio = to.pxPerMm / from.pxPerMm;
  const pxPerMm = from.pxPerMm * ratio ** share;
  const travelled =
    Math.abs(ratio - 1) < 1e-6 ? share : (pxPerMm - from.pxPerMm) / (to.pxPerMm - from.pxPerMm);
  return {
    pxPerMm,
    offsetPx: [
      from.offsetPx[0] + (to.offsetPx[0] - from.offsetPx[0]) * travelled,
      from.offsetPx[1] + (to.offsetPx[1] - from.offsetPx[1]) * travelled,
    ],
  };
}
