import type { Zone } from '../../records/zone.ts';
import { homographyFromPoints } from '../../science/geometry/homography.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { containsPoint } from '../../science/geometry/polygon.ts';
import { quantile } from '../../science/statistics/quantile.ts';
import { coverageMap } from '../maps/coverageMaps.ts';
import { rectangleCorners } from '../matching/starts.ts';
import type { Photograph } from '../photograph.ts';
import type { Raster } from '../raster.ts';
import type { FoundSolid } from './findSolid.ts';
import { qualityLimits } from './pictureQuality.ts';
import { readSide, type SideTone } from './readSide.ts';
import { coverageFactor } from './zoneChange.ts';
import { totalDeviation, zoneReading } from './zoneCoverage.ts';

/** A stone's photograph on which a rectangle of known size lies. */
export interface ZoneTonesInput {
  readonly photo: Photograph;
  readonly cornersPx: Corners;
  readonly sizeMm: Point;
  /** mm from the rectangle's top left. */
  readonly zones: readonly Zone[];
}

/** Coverage of one zone; null where too little of it lies in the rectangle. */
export interface ZoneToneReading {
  readonly id: string;
  readonly coverage: {
    readonly mean: number;
    readonly low: number;
    readonly high: number;
    readonly darkest: number;
  } | null;
}

export interface ZoneTonesReading {
  /** null where the photograph is burnt out or shows no connected dark place. */
  readonly solid: FoundSolid | null;
  /** Share of the rectangle in which a channel is clipped. */
  readonly clipped: number;
  readonly photoPxPerMm: number;
  readonly zones: readonly ZoneToneReading[];
  /** Coverage smoothed to what a brush can follow, for splitting washes; null without a solid. */
  readonly brushTone: Raster | null;
}

/** A single grain of crayon is no place that one etches for: the darkest is looked for in tone smoothed by so much. */
const smoothingMm = 1;
/** The darkest place of a zone: what so much of it stays under. Our rule, so that a speck doesn't decide. */
const darkestShare = 0.95;
/** What a brush can follow: our rule. */
const brushMm = 3;

/**
 * Reads mean and darkest coverage of zones from a stone's photograph, as a comparison reads the drawn side.
 * @returns null where no bare stone can be found on it, or the corners make no rectangle.
 */
export function readZoneTones({ photo, cornersPx, sizeMm, zones }: ZoneTonesInput): ZoneTonesReading | null {
  const homography = homographyFromPoints(rectangleCorners(sizeMm), cornersPx);
  if (!homography) return null;
  const map = { homography, stretch: null };
  const side = readSide({ side: 'stone', photo, map, flat: null, chips: [], zones, sizeMm, covered: null });
  if (!side) return null;
  const solid = side.clipped <= qualityLimits.noTone ? side.solid : null;
  const common = { solid, clipped: side.clipped, photoPxPerMm: side.photoPxPerMm };
  if (!solid) return { ...common, zones: zones.map(({ id }) => ({ id, coverage: null })), brushTone: null };
  const smoothed = coverageMap(side, solid.darkness, sizeMm, smoothingMm, null);
  return {
    ...common,
    zones: zones.map((zone) => zoneTone(zone, side, solid, smoothed)),
    brushTone: coverageMap(side, solid.darkness, sizeMm, brushMm, null),
  };
}

function zoneTone(zone: Zone, side: SideTone, solid: FoundSolid, smoothed: Raster): ZoneToneReading {
  const reading = zoneReading(zone, side, solid, null, null);
  const inside = valuesInside(smoothed, zone.polygonMm);
  if (!reading || inside.length === 0) return { id: zone.id, coverage: null };
  const within = (coverage: number) => Math.min(1, Math.max(0, coverage));
  const half = coverageFactor * totalDeviation(reading.parts);
  const mean = within(reading.coverage);
  return {
    id: zone.id,
    coverage: {
      mean,
      low: within(reading.coverage - half),
      high: within(reading.coverage + half),
      darkest: Math.max(mean, within(quantile(inside, darkestShare))),
    },
  };
}

function valuesInside(
  { widthPx, heightPx, pxPerMm, originMm, data }: Raster,
  polygonMm: readonly Point[],
): number[] {
  const px = (mm: number, axis: 0 | 1) => (mm - originMm[axis]) * pxPerMm;
  const [xs, ys] = [polygonMm.map(([x]) => px(x, 0)), polygonMm.map(([, y]) => px(y, 1))];
  const values: number[] = [];
  for (let y = Math.max(0, Math.floor(Math.min(...ys))); y < Math.min(heightPx, Math.max(...ys)); y++) {
    for (let x = Math.max(0, Math.floor(Math.min(...xs))); x < Math.min(widthPx, Math.max(...xs)); x++) {
      const value = data[y * widthPx + x]!;
      if (Number.isNaN(value)) continue;
      const centre: Point = [originMm[0] + (x + 0.5) / pxPerMm, originMm[1] + (y + 0.5) / pxPerMm];
      if (containsPoint(polygonMm, centre)) values.push(value);
    }
  }
  return values;
}
