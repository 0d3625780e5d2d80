import type { UncertaintyParts } from '../../records/comparison.ts';
import type { Zone } from '../../records/zone.ts';
import { nearestValue } from '../operations/nearestValue.ts';
import { type DistanceWindow, shareWithin, signedDistance } from '../operations/signedDistance.ts';
import type { Raster } from '../raster.ts';
import type { SideTone } from './readSide.ts';

/** A zone's mean on one object, with the standard deviations of coverage that it carries. */
export interface ZoneReading {
  /** Mean coverage over the zone (its sheet-covered part); may be a little below 0 or above 1. */
  readonly coverage: number;
  readonly darkness: number;
  readonly parts: UncertaintyParts;
  /** Share of the polygon that counts, 0..1. */
  readonly covered: number;
}

/**
 * Where the surroundings aren't bare, a zone is read so far inside its outline, so that the neighbours' marks don't come in; an
 * evenly covered one always, since blur and a corner set a little off take more of its rim than they bring.
 */
const insetMm = 0.6;
const evenMedia = /^(crayon|wash|solid|tusche|rubbing|stumping)/;
/** What blur may carry over the outline: left out of the ring in which the surroundings are judged. */
const blurMm = 1;
/** Bare surroundings: mean coverage in the ring outside below this. */
const bareRing = 0.015;
/** Ring in which the surroundings are judged. */
const ringMm = 3;
/** The ground's error is smooth over about a centimetre, so a zone's mean keeps most of it: share from blocks held out on rendered pairs. */
const groundShare = 1;
/** What the unknown bend of a camera's own contrast curve does to a middle tone when no chips tell it. */
const standardCurveDoubt = 0.007;
/** How much of a rim, in photograph px, blur may carry over an outline: a lens's blur of about a third of a px. */
const blurPx = 0.14;
/** Two readings of one sheet differ by about this, before repeats of the room say otherwise. */
const startingFloor = 0.003;

/** Reads one zone on one object: coverage is darkness over the solid's darkness. */
export function zoneReading(
  zone: Zone,
  side: SideTone,
  solid: { readonly darkness: number; readonly error: number },
  errorMm: Raster | null,
  floor: number | null,
): ZoneReading | null {
  const { frame } = side;
  const window = signedDistance(zone.polygonMm, frame, ringMm + 1);
  const own = shareWithin(window, 0, frame.pxPerMm);
  const whole = sumOver(side, window, own);
  const polygonPx = own.reduce((sum, share) => sum + share, 0);
  const covered = polygonPx > 0 ? whole.count / polygonPx : 0;
  if (covered < 0.05) return null;
  const outer = shareWithin(window, ringMm, frame.pxPerMm);
  const near = shareWithin(window, blurMm, frame.pxPerMm);
  const ring = sumOver(
    side,
    window,
    outer.map((share, i) => share - near[i]!),
  );
  const alone = covered > 0.98 && ring.count > 0 && ring.darkness / ring.count < bareRing * solid.darkness;
  const inset = sumOver(side, window, shareWithin(window, -insetMm, frame.pxPerMm));
  const useInset = (!alone || isEven(zone.medium)) && inset.count > 0.3 * whole.count;
  const read = useInset ? inset : whole;
  const darkness = read.darkness / read.count;
  const coverage = darkness / solid.darkness;
  return {
    coverage,
    darkness,
    covered,
    parts: partsOf(side, window, own, coverage, solid, alone, errorMm, floor),
  };
}

function isEven(medium: string): boolean {
  return evenMedia.test(medium);
}

interface Sum {
  readonly darkness: number;
  readonly count: number;
}

function sumOver(side: SideTone, window: DistanceWindow, shares: Float32Array): Sum {
  let darkness = 0;
  let count = 0;
  for (let y = 0, i = 0; y < window.heightPx; y++) {
    const row = (window.top + y) * side.frame.widthPx + window.left;
    for (let x = 0; x < window.widthPx; x++, i++) {
      const share = shares[i]!;
      const value = side.darkness[row + x]!;
      if (share <= 0 || Number.isNaN(value) || !side.counts[row + x]) continue;
      darkness += share * value;
      count += share;
    }
  }
  return { darkness, count };
}

function partsOf(
  side: SideTone,
  window: DistanceWindow,
  own: Float32Array,
  coverage: number,
  solid: { readonly darkness: number; readonly error: number },
  alone: boolean,
  errorMm: Raster | null,
  floor: number | null,
): UncertaintyParts {
  const c = Math.min(1, Math.max(0, coverage));
  const areaPx = own.reduce((sum, share) => sum + share, 0);
  const areaMm2 = areaPx / side.frame.pxPerMm ** 2;
  const perimeterMm = outlineLength(window, side.frame.pxPerMm);
  const misfitMm = alone ? 0 : errorAt(errorMm, window, side);
  const hump = 4 * c * (1 - c);
  const { response } = side;
  return {
    // Grain makes a zone's mean vary as if it were patches of about half a square millimetre; noise adds little to that.
    noise: (side.noise * 3) / Math.sqrt(Math.max(areaPx, 1)),
    ground: (1 - c) * groundShare * groundError(side, window, own),
    solid: (c * solid.error) / solid.darkness,
    response:
      hump * (response.origin === 'chips' ? 0.5 * (response.residual ?? 0) + 0.001 : standardCurveDoubt),
    registration:
      (c * perimeterMm * Math.hypot(0.25 * misfitMm, blurPx / side.photoPxPerMm)) / Math.max(areaMm2, 1),
    floor: floor ?? startingFloor,
  };
}

function groundError(side: SideTone, window: DistanceWindow, own: Float32Array): number {
  const { grid, error } = side.ground;
  let sum = 0;
  let count = 0;
  for (let y = 0, i = 0; y < window.heightPx; y++) {
    for (let x = 0; x < window.widthPx; x++, i++) {
      if (own[i]! <= 0) continue;
      const column = Math.min(grid.columns - 1, Math.floor((window.left + x) / grid.cellPx));
      const row = Math.min(grid.rows - 1, Math.floor((window.top + y) / grid.cellPx));
      sum += error[row * grid.columns + column]! ** 2;
      count++;
    }
  }
  return count === 0 ? 0 : Math.sqrt(sum / count);
}

function errorAt(errorMm: Raster | null, window: DistanceWindow, side: SideTone): number {
  if (!errorMm) return 0;
  const xMm = side.frame.originMm[0] + (window.left + window.widthPx / 2) / side.frame.pxPerMm;
  const yMm = side.frame.originMm[1] + (window.top + window.heightPx / 2) / side.frame.pxPerMm;
  return nearestValue(errorMm, xMm, yMm);
}

/** Length of the outline in mm, from how many pixels lie within half a pixel of it. */
function outlineLength(window: DistanceWindow, pxPerMm: number): number {
  let near = 0;
  for (const distance of window.distanceMm) if (Math.abs(distance) * pxPerMm <= 0.5) near++;
  return near / pxPerMm;
}

/** All parts together, standard deviation of coverage. */
export function totalDeviation(parts: UncertaintyParts): number {
  return Math.hypot(parts.noise, parts.ground, parts.solid, parts.response, parts.registration, parts.floor);
}
