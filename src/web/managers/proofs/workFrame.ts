import type { WorkEntry } from '../../../records/workEntry.ts';
import type { Point } from '../../../science/geometry/point.ts';

/** What of a stone is measured on its prints, stone mm. */
interface WorkFrame {
  readonly offsetMm: Point;
  readonly sizeMm: Point;
}

/** Where there is no work rectangle, so much bare stone round the zones is taken along, as where tones are read. */
const roundZonesMm = 10;

/** The work rectangle; without one the extent of the zones and a little round them; without zones the stone. */
export function workFrame({
  rectangle,
  stone,
  zones,
}: Pick<WorkEntry, 'rectangle' | 'stone' | 'zones'>): WorkFrame {
  if (rectangle) return rectangle;
  const points = zones.flatMap(({ polygonMm }) => polygonMm);
  const along = (axis: 0 | 1, length: number) => {
    const values = points.map((point) => point[axis]);
    const from = Math.max(0, Math.min(length, ...values) - roundZonesMm);
    const to = Math.min(length, Math.max(0, ...values) + roundZonesMm);
    return to > from ? ([from, to] as const) : ([0, length] as const);
  };
  const [left, right] = along(0, stone.widthMm);
  const [top, bottom] = along(1, stone.heightMm);
  return { offsetMm: [left, top], sizeMm: [right - left, bottom - top] };
}

/** Width over height of what is measured. */
export function workAspect(work: Pick<WorkEntry, 'rectangle' | 'stone' | 'zones'>): number {
  const { sizeMm } = workFrame(work);
  return sizeMm[0] / sizeMm[1];
}
