import type { PatchIntention, StonePatch } from '../../../records/testStone.ts';
import type { WorkZone } from '../../../records/work.ts';
import type { Intention } from '../../../records/zone.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { isSquareName } from '../../../studio/trials/places/patchName.ts';
import { say } from '../../words/say.ts';
import { type Drawing, drawingOf, mediumNotSaid } from '../zoneDrawing.ts';
import { onStone } from '../zoneOutline.ts';

/** What an outline can be begun as; what is to be compared with is said later. */
export type DrawnAs = Exclude<PatchIntention, 'control'>;

/** On the board a patch is a zone; a patch meant to print, or compared with, is drawn as any other. */
const intentionOf = {
  image: 'drawn',
  control: 'drawn',
  guide: 'guide',
  'stop-out': 'stop-out',
} as const satisfies Record<PatchIntention, Intention>;

/** The patches of a test stone laid out to be drawn and moved. */
export function patchDrawing(patches: readonly StonePatch[]): Drawing {
  return drawingOf({ head: 'top', rectangle: null, zones: patches.map(zoneOfPatch) });
}

/** A patch as the board has it. */
export function zoneOfPatch({ id, intention, polygonMm }: StonePatch): WorkZone {
  return { id, name: id, medium: mediumNotSaid, intention: intentionOf[intention], tone: null, polygonMm };
}

/** What a new outline becomes once it is closed. */
export function newPatchZone(id: string, intention: DrawnAs): Omit<WorkZone, 'polygonMm'> {
  return { id, name: id, medium: mediumNotSaid, intention: intentionOf[intention], tone: null };
}

/**
 * The patches that are drawn, with what was said of each; of one that was just drawn, only what it was begun as.
 * @param said by id, of patches that were taken away too, so that one brought back knows what it got
 */
export function patchesOf(
  zones: readonly WorkZone[],
  said: ReadonlyMap<string, StonePatch>,
): readonly StonePatch[] {
  return zones.map((zone) => {
    const known = said.get(zone.id);
    if (known) return known.polygonMm === zone.polygonMm ? known : { ...known, polygonMm: zone.polygonMm };
    const { id, intention, polygonMm } = zone;
    return {
      id,
      square: id,
      strip: null,
      row: null,
      column: null,
      polygonMm,
      intention: intention === 'guide' || intention === 'stop-out' ? intention : 'image',
      treatment: {},
      note: '',
    };
  });
}

/** An id for a patch drawn by hand: a plain number, which no square of a grid has, and no patch here ever had. */
export function freePatchId(taken: Iterable<string>): string {
  const ids = new Set(taken);
  let number = 1;
  while (ids.has(String(number))) number++;
  return String(number);
}

/** What keeps a patch from going by another name; null: nothing does. */
export function patchIdTrouble(id: string, others: readonly string[], hasGrid: boolean): string | null {
  const name = id.trim();
  if (name === '') return say('A patch needs a name.');
  if (name.length > 60) return say('60 letters at most.');
  if (others.includes(name)) return say('Another patch goes by {name}.', { name });
  if (hasGrid && isSquareName(name)) return say('A row and a place are kept for squares in rows.');
  return null;
}

/** The smallest upright rectangle about an outline, mm: its top left and its size. */
export function outlineBox(outline: readonly Point[]): { readonly fromMm: Point; readonly sizeMm: Point } {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const from: Point = [Math.min(...xs), Math.min(...ys)];
  return { fromMm: from, sizeMm: [Math.max(...xs) - from[0], Math.max(...ys) - from[1]] };
}

/**
 * An outline laid so that the rectangle about it has this place and size, its shape drawn out with it; kept on the
 * stone. One without width or height keeps it.
 */
export function laidInBox(
  outline: readonly Point[],
  box: ReturnType<typeof outlineBox>,
  stoneMm: Point,
): readonly Point[] {
  const was = outlineBox(outline);
  const along = (axis: 0 | 1, value: number) => {
    const size = was.sizeMm[axis] > 0 ? Math.min(box.sizeMm[axis], stoneMm[axis]) : 0;
    const from = Math.min(Math.max(box.fromMm[axis], 0), stoneMm[axis] - size);
    return from + (size > 0 ? ((value - was.fromMm[axis]) * size) / was.sizeMm[axis] : 0);
  };
  return outline.map(([x, y]) => onStone([along(0, x), along(1, y)], stoneMm));
}

/** An outline made larger to the right and down, or smaller, never to nothing. */
export function laidLarger(outline: readonly Point[], byMm: Point, stoneMm: Point): readonly Point[] {
  const { fromMm, sizeMm } = outlineBox(outline);
  const size = (axis: 0 | 1) => Math.max(0.5, sizeMm[axis] + byMm[axis]);
  return laidInBox(outline, { fromMm, sizeMm: [size(0), size(1)] }, stoneMm);
}
