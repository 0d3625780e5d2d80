import { hatchTiles } from '../../paper/charts/hatching.ts';
import type { Point } from '../../science/geometry/point.ts';
import { hatchScale, type MapKind, mapInk, mapKinds } from '../look/mapInk.ts';
import { type LinkedView, type PlaceMm, toScreenPx } from './linkedView.ts';
import { castShadow, clipTo, rollEdge } from './rolledSheet.ts';
import { type Lift, liftedSheet } from './sheetLift.ts';

/** A picture of the work rectangle and the colour of the bare ground at its rim. */
export interface GroundedPicture {
  readonly picture: CanvasImageSource;
  readonly ground: string;
  /** Picture and rim as one, with nothing where the sheet did not reach; null where it reached everywhere. */
  readonly cut: CanvasImageSource | null;
}

/** Everything that is seen at once. Masks hold their yes in the alpha channel. */
export interface LiftScene {
  readonly sizeMm: Point;
  readonly stone: GroundedPicture;
  readonly print: GroundedPicture;
  readonly masks: Readonly<Partial<Record<MapKind, CanvasImageSource>>>;
  readonly zones: readonly {
    readonly id: string;
    readonly letter: string;
    readonly polygonMm: readonly Point[];
  }[];
  readonly picked: string | null;
  /** Whether every zone is outlined with its letter, or only the picked one. */
  readonly lettered: boolean;
}

/** How far stone and sheet reach beyond the work rectangle, mm. */
export function rimMm(sizeMm: Point): number {
  return Math.min(sizeMm[0], sizeMm[1]) * 0.045;
}

/** The whole sheet, rim included. */
export function sheetPlace(sizeMm: Point): PlaceMm {
  const rim = rimMm(sizeMm);
  return { min: [-rim, -rim], max: [sizeMm[0] + rim, sizeMm[1] + rim] };
}

/** Paints stones, prints and maps on one canvas; keeps what is costly to make again. */
export class LiftPainter {
  readonly #scratch = document.createElement('canvas');
  readonly #patterns = new Map<string, CanvasPattern>();

  /** Paints the scene. `ratio` is device px per screen px; the canvas has already its device size. */
  paint(
    context: CanvasRenderingContext2D,
    scene: LiftScene,
    view: LinkedView,
    lift: Lift,
    ratio: number,
  ): void {
    const { canvas } = context;
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, canvas.width, canvas.height);
    context.setTransform(ratio, 0, 0, ratio, 0, 0);
    context.imageSmoothingQuality = 'high';
    const place = sheetPlace(scene.sizeMm);
    this.#layFace(context, scene.stone, view, scene.sizeMm, place);
    if (scene.lettered) outlineZones(context, scene, view);
    const sheet = liftedSheet(view, place, lift);
    if (!sheet.gone) {
      castShadow(context, sheet);
      context.save();
      clipTo(context, sheet.lyingPx);
      this.#layFace(context, scene.print, view, scene.sizeMm, place);
      for (const kind of mapKinds) {
        const mask = scene.masks[kind];
        if (mask) this.#layHatching(context, kind, mask, view, scene.sizeMm, ratio);
      }
      if (scene.lettered) outlineZones(context, scene, view);
      context.restore();
      rollEdge(context, sheet, scene.print.picture, scene.sizeMm, view);
    }
    outlinePicked(context, scene, view);
  }

  #layFace(
    context: CanvasRenderingContext2D,
    face: GroundedPicture,
    view: LinkedView,
    sizeMm: Point,
    place: PlaceMm,
  ): void {
    const [left, top] = toScreenPx(view, place.min);
    const [right, bottom] = toScreenPx(view, place.max);
    if (face.cut) {
      context.drawImage(face.cut, left, top, right - left, bottom - top);
      return;
    }
    context.fillStyle = face.ground;
    context.fillRect(left, top, right - left, bottom - top);
    const [x, y] = toScreenPx(view, [0, 0]);
    context.drawImage(face.picture, x, y, sizeMm[0] * view.pxPerMm, sizeMm[1] * view.pxPerMm);
  }

  #layHatching(
    context: CanvasRenderingContext2D,
    kind: MapKind,
    mask: CanvasImageSource,
    view: LinkedView,
    sizeMm: Point,
    ratio: number,
  ): void {
    const { canvas } = context;
    this.#scratch.width = canvas.width;
    this.#scratch.height = canvas.height;
    const scratch = this.#scratch.getContext('2d');
    if (!scratch) return;
    const [x, y] = toScreenPx(view, [0, 0]).map((value) => value * ratio) as [number, number];
    const [width, height] = [sizeMm[0] * view.pxPerMm * ratio, sizeMm[1] * view.pxPerMm * ratio];
    const border = 1.5 * ratio;
    // The border: the mask pushed to four sides, less the mask itself.
    for (const [dx, dy] of [
      [-border, 0],
      [border, 0],
      [0, -border],
      [0, border],
    ] as const)
      scratch.drawImage(mask, x + dx, y + dy, width, height);
    scratch.globalCompositeOperation = 'source-in';
    scratch.fillStyle = mapInk[kind].stroke;
    scratch.fillRect(0, 0, canvas.width, canvas.height);
    scratch.globalCompositeOperation = 'destination-out';
    scratch.drawImage(mask, x, y, width, height);
    context.save();
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.drawImage(this.#scratch, 0, 0);
    scratch.globalCompositeOperation = 'source-over';
    scratch.clearRect(0, 0, canvas.width, canvas.height);
    scratch.drawImage(mask, x, y, width, height);
    scratch.globalCompositeOperation = 'source-in';
    scratch.fillStyle = this.#pattern(scratch, kind, ratio);
    scratch.fillRect(0, 0, canvas.width, canvas.height);
    scratch.globalCompositeOperation = 'source-over';
    context.drawImage(this.#scratch, 0, 0);
    context.restore();
  }

  #pattern(context: CanvasRenderingContext2D, kind: MapKind, ratio: number): CanvasPattern {
    const key = `${kind} ${ratio}`;
    const held = this.#patterns.get(key);
    if (held) return held;
    const tile = hatchTiles[kind];
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(tile.width * hatchScale * ratio);
    canvas.height = Math.round(tile.height * hatchScale * ratio);
    const pen = canvas.getContext('2d')!;
    pen.scale(canvas.width / tile.width, canvas.height / tile.height);
    pen.strokeStyle = mapInk[kind].stroke;
    pen.lineWidth = tile.strokeWidth;
    pen.beginPath();
    for (const [x1, y1, x2, y2] of tile.strokes) {
      pen.moveTo(x1, y1);
      pen.lineTo(x2, y2);
    }
    for (const [x, y, radius] of tile.rings) {
      pen.moveTo(x + radius, y);
      pen.arc(x, y, radius, 0, 2 * Math.PI);
    }
    pen.stroke();
    pen.fillStyle = mapInk[kind].stroke;
    for (const [x, y, radius] of tile.dots) {
      pen.beginPath();
      pen.arc(x, y, radius, 0, 2 * Math.PI);
      pen.fill();
    }
    const pattern = context.createPattern(canvas, 'repeat')!;
    this.#patterns.set(key, pattern);
    return pattern;
  }
}

/** Every zone where it lies: a hairline and a small letter at its upper left. */
function outlineZones(context: CanvasRenderingContext2D, scene: LiftScene, view: LinkedView): void {
  context.save();
  context.lineJoin = 'round';
  for (const [colour, width] of [
    ['rgba(251, 249, 243, 0.75)', 2.5],
    ['rgba(26, 23, 20, 0.8)', 0.9],
  ] as const) {
    context.strokeStyle = colour;
    context.lineWidth = width;
    for (const { polygonMm } of scene.zones) {
      outline(context, polygonMm, view);
      context.stroke();
    }
  }
  const letterPx = Math.min(Math.max(8.5 * view.pxPerMm, 10), 15);
  context.font = `700 ${letterPx}px "Archivo Variable", sans-serif`;
  context.textAlign = 'center';
  for (const { id, letter, polygonMm } of scene.zones) {
    // The picked zone has a letter of its own, larger.
    if (id === scene.picked) continue;
    const [x, y] = toScreenPx(view, topLeftOf(polygonMm));
    const height = letterPx * 1.35;
    const width = Math.max(height, context.measureText(letter).width + 0.6 * letterPx);
    context.fillStyle = '#fbf9f3';
    context.fillRect(x, y, width, height);
    context.strokeRect(x, y, width, height);
    context.fillStyle = '#1a1714';
    context.fillText(letter, x + width / 2, y + height - 0.3 * letterPx);
  }
  context.restore();
}

function outline(context: CanvasRenderingContext2D, polygonMm: readonly Point[], view: LinkedView): void {
  context.beginPath();
  for (const point of polygonMm) context.lineTo(...toScreenPx(view, point));
  context.closePath();
}

function outlinePicked(context: CanvasRenderingContext2D, scene: LiftScene, view: LinkedView): void {
  const zone = scene.zones.find(({ id }) => id === scene.picked);
  if (!zone) return;
  context.save();
  outline(context, zone.polygonMm, view);
  context.lineJoin = 'round';
  context.strokeStyle = '#fbf9f3';
  context.lineWidth = 6;
  context.stroke();
  context.strokeStyle = '#7a3e12';
  context.lineWidth = 3;
  context.stroke();
  const [x, y] = toScreenPx(view, topLeftOf(zone.polygonMm));
  context.font = '750 26px "Archivo Variable", sans-serif';
  const width = context.measureText(zone.letter).width + 20;
  context.fillStyle = '#7a3e12';
  context.fillRect(x - 2, y - 36, width, 36);
  context.fillStyle = '#fff';
  context.fillText(zone.letter, x + 8, y - 9);
  context.restore();
}

function topLeftOf(polygonMm: readonly Point[]): Point {
  return polygonMm.reduce((best, point) => (point[0] + point[1] < best[0] + best[1] ? point : best));
}
