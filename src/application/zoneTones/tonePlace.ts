import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { AttachedPhotograph } from '../../records/attachedPhotograph.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { Work } from '../../records/work.ts';
import type { Zone } from '../../records/zone.ts';
import type { ZoneTonesRequest } from '../../records/zoneTones.ts';
import { applyHomography, homographyFromPoints } from '../../science/geometry/homography.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import type { StoredPhotograph } from '../../store/repositories/photographRepository.ts';
import { validateCorners } from '../comparison/validateCorners.ts';
import { validateProportions } from '../comparison/validateSize.ts';

/** The rectangle in which tones are read, on the stone and on the photograph. */
export interface TonePlace {
  /** Its top left corner, stone mm. */
  readonly offsetMm: Point;
  readonly sizeMm: Point;
  readonly cornersPx: Corners;
  /** The work's zones, mm from its top left corner. */
  readonly zones: readonly Zone[];
}

/** Where corners of the whole stone are given, so much bare stone round the zones is taken along. */
const roundZonesMm = 10;

/**
 * Where the zones of a work lie on a photograph of its stone. Corners of the whole stone are carried over to the work
 * rectangle, or without one to the extent of the zones, since beyond the stone lies table.
 * @returns `corners-malformed` where none are known, the faults of `validateCorners`, or `body-malformed` with the field
 */
export function tonePlace(
  work: Work,
  stone: KeptStone,
  photograph: StoredPhotograph,
  attached: AttachedPhotograph,
  { cornersPx, of }: Pick<ZoneTonesRequest, 'cornersPx' | 'of'>,
): Result<TonePlace> {
  const given = cornersPx ?? attached.corners?.px ?? null;
  if (given === null) return fail(failure('corners-malformed', { photo: 'stone' }, 'cornersPx'));
  const known = of ?? (cornersPx ? null : attached.corners!.of);
  const enclosed = known ?? (work.rectangle ? 'rectangle' : 'stone');
  if (enclosed === 'rectangle' && work.rectangle === null) {
    return fail(failure('body-malformed', { why: 'the work has no work rectangle' }, 'of'));
  }
  const stoneMm: Point = [stone.widthMm, stone.heightMm];
  const fault = judgeCorners(given, photograph, enclosed === 'stone' ? stoneMm : work.rectangle!.sizeMm);
  if (fault) return fail(fault);
  const { offsetMm, sizeMm } = work.rectangle ?? zonesExtent(work, stoneMm);
  const placed = enclosed === 'rectangle' ? given : carried(given, stoneMm, offsetMm, sizeMm);
  const zones = work.zones.map(({ tone: _, ...zone }) => ({
    ...zone,
    polygonMm: zone.polygonMm.map(([x, y]): Point => [x - offsetMm[0], y - offsetMm[1]]),
  }));
  return ok({ offsetMm, sizeMm, cornersPx: placed, zones });
}

function judgeCorners(
  corners: Corners,
  { widthPx, heightPx }: StoredPhotograph,
  sizeMm: Point,
): Failure | null {
  const fault = validateCorners(corners, 'stone', widthPx, heightPx);
  if (fault) return { ...fault, path: fault.path?.replace('stone.corners', 'cornersPx') ?? 'cornersPx' };
  const shape = validateProportions(sizeMm, corners);
  return shape && { ...shape, path: 'cornersPx' };
}

function zonesExtent({ zones }: Work, stoneMm: Point): { readonly offsetMm: Point; readonly sizeMm: Point } {
  const points = zones.flatMap(({ polygonMm }) => polygonMm);
  const along = (axis: 0 | 1) => {
    const values = points.map((point) => point[axis]);
    const from = Math.max(0, Math.min(stoneMm[axis], ...values) - roundZonesMm);
    const to = Math.min(stoneMm[axis], Math.max(0, ...values) + roundZonesMm);
    return to > from ? ([from, to] as const) : ([0, stoneMm[axis]] as const);
  };
  const [[left, right], [top, bottom]] = [along(0), along(1)];
  return { offsetMm: [left, top], sizeMm: [right - left, bottom - top] };
}

/** The corners of a rectangle on the stone, from those of the whole stone. They were judged: they make a rectangle. */
function carried(stonePx: Corners, [width, height]: Point, [x, y]: Point, [across, down]: Point): Corners {
  const whole: Corners = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const toPx = homographyFromPoints(whole, stonePx)!;
  const at = (dx: number, dy: number) => applyHomography(toPx, [x + dx, y + dy]);
  return [at(0, 0), at(across, 0), at(across, down), at(0, down)];
}
