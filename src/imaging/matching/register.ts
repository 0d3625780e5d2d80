import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { RegistrationSample } from '../../records/comparison.ts';
import { homographyFromPoints } from '../../science/geometry/homography.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { mapPoint } from '../operations/mapPoint.ts';
import type { Photograph } from '../photograph.ts';
import type { PlaneMap } from '../planeMap.ts';
import type { Mask, Raster } from '../raster.ts';
import { buildGreyPyramid } from './greyPyramid.ts';
import { likelyCorners } from './likelyCorners.ts';
import { refineStretch, type SparingPasses } from './refineStretch.ts';
import { coveredBySheet } from './sheetCoverage.ts';
import { type SheetOutline, sheetOutline } from './sheetOutline.ts';
import {
  rankStarts,
  rectangleCorners,
  type Start,
  type StartSearch,
  searchStarts,
  sureStart,
} from './starts.ts';
import { statedErrors } from './statedErrors.ts';
import { guessesFromSheet, suggestCorners } from './suggestCorners.ts';

export interface RegisterInput {
  readonly stone: Photograph;
  readonly proof: Photograph;
  readonly sizeMm: Point;
  /** Corners of the work rectangle on the stone's photograph, px; null: they are looked for. */
  readonly stoneCorners: Corners | null;
  /** Where the stone's TL, TR, BR, BL came to lie on the print, as well as a person can guess; null: they are looked for. */
  readonly proofCorners: Corners | null;
  /** Their order is beyond doubt: no other turn or mirroring is tried. */
  readonly proofCornersInOrder?: boolean;
  /** For tones alone: the likeliest position is asked first, and the passes are spared. */
  readonly sparing?: SparingPasses;
  readonly onProgress?: (fraction: number) => void;
  readonly stopped?: () => boolean;
}

export interface Registered {
  readonly verdict: 'ok';
  readonly kind: string;
  readonly turn: 0 | 90 | 180 | 270;
  readonly mirrored: true;
  /** Both from stone mm. */
  readonly stoneMap: PlaneMap;
  readonly proofMap: PlaneMap;
  readonly residualMm: { readonly median: number; readonly p90: number };
  /** A regular grid over the work rectangle, edges included, without places off the sheet. */
  readonly samples: readonly RegistrationSample[];
  /** Where the sheet is, over the work rectangle. */
  readonly covered: Mask;
  /** Whether a noticeable part of the rectangle lies off the sheet. */
  readonly partial: boolean;
  /** Local standard deviation of the registration, mm. */
  readonly errorMm: Raster;
  readonly cornersFound: { readonly stone: boolean; readonly proof: boolean };
}

export type Registration =
  | Registered
  | { readonly verdict: 'unmirrored' | 'no-match'; readonly reason: string; readonly kind: string };

/** A start is believed when its distinct evidence comes to this at least, and to so many times its best rival's. */
const leastDistinct = 20;
const overRival = 2;
/** With less of the rectangle than this covered by the sheet the record is `partial`. */
const wholeShare = 0.98;
const samplesAcross = 25;

/**
 * Brings the print onto the stone: eight starts ranked by evidence, then a smooth stretch in passes.
 * @returns a failure where the stone's rectangle can't be found, or when stopped; a refusal is a verdict, not a failure.
 */
export function register(input: RegisterInput): Result<Registration> {
  const progress = (fraction: number): boolean => {
    input.onProgress?.(fraction);
    return !(input.stopped?.() ?? false);
  };
  const stoneCorners = input.stoneCorners ?? suggestCorners(input.stone, input.sizeMm)?.corners ?? null;
  const stoneMap = stoneCorners && mapOfCorners(input.sizeMm, stoneCorners);
  if (!stoneMap) {
    return fail(
      failure('corners-not-found', {
        photo: 'stone',
        why: 'neither corner marks nor an outline of the given shape show',
      }),
    );
  }
  const outline = sheetOutline(input.proof);
  const stone = buildGreyPyramid(input.stone);
  const print = buildGreyPyramid(input.proof);
  if (!progress(0.1)) return fail(failure('stopped'));
  const search = searchStarts(stone, stoneMap.homography, print, input.sizeMm);
  const starts = startsOf(input, search, outline);
  if (!progress(0.35)) return fail(failure('stopped'));
  const refused = refusalOf(starts);
  if (refused) return ok(refused);
  const refined = refineStretch(
    stone,
    stoneMap,
    print,
    starts[0]!.homography,
    input.sizeMm,
    (done) => progress(0.35 + 0.55 * done),
    input.sparing ?? null,
  );
  if (input.stopped?.()) return fail(failure('stopped'));
  if (!refined) return ok(noMatch('too few places of the drawing could be found on the print'));
  const covered = coveredBySheet(refined.map, outline, input.proof, input.sizeMm);
  const errors = statedErrors(refined.fit, input.sizeMm, covered);
  progress(1);
  return ok({
    verdict: 'ok',
    kind: 'homography+stretch',
    turn: turnOf(refined.map, input.sizeMm),
    mirrored: true,
    stoneMap,
    proofMap: refined.map,
    residualMm: errors.residualMm,
    samples: samplesOver(stoneMap, refined.map, input.sizeMm, covered),
    covered,
    partial: shareOf(covered) < wholeShare,
    errorMm: errors.errorMm,
    cornersFound: { stone: input.stoneCorners === null, proof: input.proofCorners === null },
  });
}

/** Sparing: the likeliest place on the sheet, asked in one position; where it isn't surely there, in all; then all places. */
function startsOf(input: RegisterInput, search: StartSearch, outline: SheetOutline | null): readonly Start[] {
  const { proof, sizeMm } = input;
  if (input.proofCorners) return rankStarts(search, [input.proofCorners], input.proofCornersInOrder);
  if (input.sparing) {
    const { corners, alike } = likelyCorners(proof, outline, sizeMm);
    const sure = sureStart(search, corners, alike);
    if (sure) return [sure];
    const starts = rankStarts(search, [corners]);
    if (refusalOf(starts) === null) return starts;
  }
  return rankStarts(search, guessesFromSheet(proof, outline, sizeMm));
}

/** The map from stone mm to a photograph on which the work rectangle's corners are known; null where they make no rectangle. */
export function mapOfCorners(sizeMm: Point, cornersPx: Corners): PlaneMap | null {
  const homography = homographyFromPoints(rectangleCorners(sizeMm), cornersPx);
  return homography && { homography, stretch: null };
}

function refusalOf(starts: readonly Start[]): Registration | null {
  const [best, ...others] = starts;
  if (!best || best.distinct < leastDistinct) {
    return noMatch('nothing of the drawing could be found on the print');
  }
  const rivals = others.filter((other) => !samePlace(best, other));
  if (rivals.some((rival) => best.distinct < overRival * rival.distinct)) {
    return noMatch('no one position of the print fits the stone clearly better than the next');
  }
  if (!best.mirrored) {
    return {
      verdict: 'unmirrored',
      reason:
        'the print reads the same way round as the stone, but a print is its mirror image: one photograph is flipped, or this is not a direct print',
      kind: 'homography',
    };
  }
  return null;
}

/** Two guesses that were mended to the same position are no rivals. */
function samePlace(a: Start, b: Start): boolean {
  const places: readonly Point[] = [
    [0, 0],
    [200, 0],
    [0, 200],
    [200, 200],
  ];
  const map = (start: Start) =>
    places.map((place) => mapPoint({ homography: start.homography, stretch: null }, place));
  const other = map(b);
  const sizePx = Math.hypot(other[1]![0] - other[0]![0], other[1]![1] - other[0]![1]);
  return map(a).every(([x, y], i) => Math.hypot(x - other[i]![0], y - other[i]![1]) < 0.05 * sizePx);
}

function noMatch(reason: string): Registration {
  return { verdict: 'no-match', reason, kind: 'none' };
}

/** How far the print's photograph is turned, to the nearest quarter, as seen from the mirrored stone. */
function turnOf(map: PlaneMap, [widthMm, heightMm]: Point): 0 | 90 | 180 | 270 {
  const from = mapPoint(map, [widthMm, heightMm / 2]);
  const to = mapPoint(map, [0, heightMm / 2]);
  const quarter = Math.round(Math.atan2(to[1] - from[1], to[0] - from[0]) / (Math.PI / 2));
  return ([0, 90, 180, 270] as const)[((quarter % 4) + 4) % 4]!;
}

function samplesOver(
  stoneMap: PlaneMap,
  proofMap: PlaneMap,
  [widthMm, heightMm]: Point,
  covered: Mask,
): RegistrationSample[] {
  const samples: RegistrationSample[] = [];
  for (let row = 0; row < samplesAcross; row++) {
    for (let column = 0; column < samplesAcross; column++) {
      const stoneMm: Point = [
        (widthMm * column) / (samplesAcross - 1),
        (heightMm * row) / (samplesAcross - 1),
      ];
      const x = Math.min(covered.widthPx - 1, Math.floor(stoneMm[0] * covered.pxPerMm));
      const y = Math.min(covered.heightPx - 1, Math.floor(stoneMm[1] * covered.pxPerMm));
      if (!covered.data[y * covered.widthPx + x]) continue;
      samples.push({ stoneMm, stonePx: mapPoint(stoneMap, stoneMm), proofPx: mapPoint(proofMap, stoneMm) });
    }
  }
  return samples;
}

function shareOf(mask: Mask): number {
  let count = 0;
  for (const value of mask.data) if (value) count++;
  return count / mask.data.length;
}
