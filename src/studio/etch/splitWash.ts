import type { WashPart, WashSplit } from '../../records/etch.ts';
import type { Point } from '../../science/geometry/point.ts';
import { containsPoint } from '../../science/geometry/polygon.ts';
import { strengthOfTone, toneSteps } from './chooseRow.ts';
import { mergeSmallPlaces } from './washPlaces.ts';
import { tracedRings } from './washRings.ts';

/** Coverage on the stone as a grid: cell (i, j) has its centre at `originMm + ((i + 0.5) / pxPerMm, (j + 0.5) / pxPerMm)`. */
export interface ToneGrid {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerMm: number;
  readonly originMm: Point;
  /** Coverage 0..1, row by row; NaN where nothing was measured. */
  readonly data: Float32Array;
}

/** Connected places smaller than this can't be laid by themselves with a brush: our rule, no source. */
export const smallestPlaceCm2 = 4;

const strengths = ['light', 'middle', 'dark'] as const;

/**
 * Splits a wash by its measured tone into light, middle and dark parts (the steps of `strengthOfTone`), so that each
 * can have its own etch. Connected places under the smallest are merged into the neighbour with which they share
 * most of their edge, smallest first; where two share alike, into the weaker.
 * Cells without a tone count as light, because lost lights never return; how many there were is said.
 * @param tone smoothed to what a brush can follow: a raster that shows single crayon grains splits into crumbs,
 * all of which would be merged away. Cells whose centre lies outside the polygon are left out.
 * @param polygonMm the zone, stone mm.
 * @returns areas that sum to the zone's cells (cell area × count; a polygon finer than a cell differs by its edge);
 * no parts where not one cell lies inside.
 */
export function splitWash(
  tone: ToneGrid,
  polygonMm: readonly Point[],
  smallestCm2: number = smallestPlaceCm2,
): WashSplit {
  const { widthPx, heightPx, pxPerMm } = tone;
  const { classes, inside, unread } = classesOf(tone, polygonMm);
  const cellCm2 = 1 / (pxPerMm * pxPerMm) / 100;
  const grid = { classes, widthPx, heightPx };
  const merged = mergeSmallPlaces(grid, smallestCm2 / cellCm2);
  const parts = strengths.flatMap((strength, index): WashPart[] => {
    const cells = classes.reduce((count, value) => count + (value === index ? 1 : 0), 0);
    if (cells === 0) return [];
    const rings = tracedRings(grid, index).map((ring) =>
      ring.map(([x, y]): Point => [tone.originMm[0] + x / pxPerMm, tone.originMm[1] + y / pxPerMm]),
    );
    return [{ strength, areaCm2: cells * cellCm2, outlinesMm: rings }];
  });
  return { parts, why: splitWords(parts, inside, unread, merged, smallestCm2) };
}

/** 0 light, 1 middle, 2 dark, −1 outside. */
function classesOf({ widthPx, heightPx, pxPerMm, originMm, data }: ToneGrid, polygonMm: readonly Point[]) {
  const classes = new Int8Array(widthPx * heightPx).fill(-1);
  let inside = 0;
  let unread = 0;
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const centre: Point = [originMm[0] + (x + 0.5) / pxPerMm, originMm[1] + (y + 0.5) / pxPerMm];
      if (!containsPoint(polygonMm, centre)) continue;
      const coverage = data[y * widthPx + x]!;
      inside++;
      if (Number.isNaN(coverage)) unread++;
      classes[y * widthPx + x] = Number.isNaN(coverage) ? 0 : strengths.indexOf(strengthOfTone(coverage));
    }
  }
  return { classes, inside, unread };
}

function splitWords(
  parts: readonly WashPart[],
  inside: number,
  unread: number,
  merged: number,
  smallestCm2: number,
): string {
  if (parts.length === 0) return 'its tone was measured nowhere inside it';
  const names = parts.map((part) => `${part.strength} ${Math.round(part.areaCm2)} cm²`).join(', ');
  const steps = `light under ${toneSteps.light * 100} %, dark from ${toneSteps.middle * 100} %, our rule`;
  return [
    parts.length === 1
      ? `measured tone counts as ${parts[0]!.strength} all over (${steps})`
      : `split by measured tone into ${names} (${steps})`,
    ...(merged === 1 ? [`1 place under ${smallestCm2} cm² went to its neighbour`] : []),
    ...(merged > 1 ? [`${merged} places under ${smallestCm2} cm² went to their neighbours`] : []),
    ...(unread > 0
      ? [`${Math.round((100 * unread) / inside)} % of it could not be read and counts as light`]
      : []),
  ].join('; ');
}
