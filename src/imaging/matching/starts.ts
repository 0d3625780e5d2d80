import {
  composeHomographies,
  type Homography,
  homographyFromPoints,
  jacobianDeterminant,
} from '../../science/geometry/homography.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import type { Frame } from '../raster.ts';
import { agreementOf } from './agreement.ts';
import { type GreyPyramid, samplePyramid } from './greyPyramid.ts';
import { prepareSearch, shiftSurfaces } from './shiftSurface.ts';

/** One way the print might lie, mended by what its tiles agree on. */
export interface Start {
  /** From stone mm to the print's photograph. */
  readonly homography: Homography;
  readonly score: number;
  /** The part of the evidence that fits here and nowhere else; see `agreementOf`. */
  readonly distinct: number;
  readonly supporters: number;
  readonly tiles: number;
  /** Whether the print is the stone's mirror image, as it should be. */
  readonly mirrored: boolean;
}

/** The longer side of the frame in which starts are compared, px. */
const longSidePx = 400;
/** Looked at round the work rectangle, mm: corners are priors of about a centimetre. */
const roomMm = 20;
const regionPx = 128;
const searchRadiusPx = 28;
const slackPx = 4;
const mendedSlackPx = 2;
const tileSpacingPx = 48;
const blurPx = 1.2;

/** Asks one position: mends it by what its tiles agree on, where the content may lie so many frame px off the straight field. */
type AskStart = (homography: Homography, slack: number) => Start;

/** Looks for one stone on one print: the stone's tiles are prepared once, whatever is asked. */
export interface StartSearch {
  readonly sizeMm: Point;
  readonly ask: AskStart;
}

/** Prepares the search for a stone on a print. */
export function searchStarts(
  stone: GreyPyramid,
  stoneHomography: Homography,
  print: GreyPyramid,
  sizeMm: Point,
): StartSearch {
  const frame = startFrame(sizeMm);
  const marginPx = Math.round(roomMm * frame.pxPerMm);
  const stoneGrey = samplePyramid(stone, { homography: stoneHomography, stretch: null }, frame);
  const search = prepareSearch(
    stoneGrey,
    frame,
    regionPx,
    searchRadiusPx,
    slackPx,
    tileSpacingPx,
    marginPx,
    blurPx,
  );
  const reach = roomMm * 1.5 * frame.pxPerMm;
  const ask: AskStart = (homography, slack) => {
    const grey = samplePyramid(print, { homography, stretch: null }, frame);
    const agreed = agreementOf(
      shiftSurfaces(search, grey, frame),
      frame.widthPx,
      frame.heightPx,
      reach,
      slack,
    );
    const mended = composeHomographies(homography, inMillimetres(agreed.mend, frame));
    const middle: Point = [sizeMm[0] / 2, sizeMm[1] / 2];
    return {
      homography: mended,
      score: agreed.score,
      distinct: agreed.distinct,
      supporters: agreed.supporters,
      tiles: search.tiles.length,
      mirrored: jacobianDeterminant(mended, middle) < 0,
    };
  };
  return { sizeMm, ask };
}

/**
 * Tries the four turns and both mirrorings of each guess of the corners, each mended by the agreement of its tiles, asks the
 * best two again from where they were mended to, and then the best once more.
 * @param guesses where the stone's TL, TR, BR, BL may have come to lie on the print.
 * @param inOrder the corners' order is beyond doubt: no other turn or mirroring is tried. A grid of like squares fits in
 * several.
 * @returns all starts, the best first; empty where no guess spans a plane.
 */
export function rankStarts(
  { sizeMm, ask }: StartSearch,
  guesses: readonly Corners[],
  inOrder = false,
): Start[] {
  const rectangle = rectangleCorners(sizeMm);
  const asked = guesses.flatMap((corners) =>
    (inOrder ? [corners] : eightOrders(corners)).flatMap((order) => {
      const homography = homographyFromPoints(rectangle, order);
      return homography ? [ask(homography, slackPx)] : [];
    }),
  );
  const ranked = asked.toSorted((a, b) => b.score - a.score);
  const again = ranked.slice(0, 2).map((start) => better(start, ask(start.homography, mendedSlackPx)));
  const reranked = [...again, ...ranked.slice(2)].toSorted((a, b) => b.score - a.score);
  const [best, ...others] = reranked;
  return best ? [better(best, ask(best.homography, mendedSlackPx)), ...others] : [];
}

/** Evidence so far above what a start needs, and above its half turn, makes asking the other six idle. */
const sureDistinct = 60;
const sureOverHalfTurn = 3;

/**
 * The likeliest position alone: the mirror image lying as the corners do, or upside down. Mended as often as `rankStarts`
 * does, so that both end in the same place.
 * @param corners clockwise from top left as seen on the print
 * @param alike whether the print lies along its photograph as the stone's rectangle does, else a quarter turned
 * @returns null unless it is beyond doubt: then all starts are to be ranked.
 */
export function sureStart({ sizeMm, ask }: StartSearch, corners: Corners, alike: boolean): Start | null {
  const orders = eightOrders(corners).slice(4);
  const pair = alike ? [orders[0]!, orders[2]!] : [orders[1]!, orders[3]!];
  const asked = pair.flatMap((order) => {
    const homography = homographyFromPoints(rectangleCorners(sizeMm), order);
    return homography ? [ask(homography, slackPx)] : [];
  });
  const [best, other] = asked.toSorted((a, b) => b.score - a.score);
  if (!best || !other || best.distinct < sureDistinct) return null;
  if (!best.mirrored || best.distinct < sureOverHalfTurn * other.distinct) return null;
  const again = better(best, ask(best.homography, mendedSlackPx));
  return better(again, ask(again.homography, mendedSlackPx));
}

/** A start asked again is nearer home, unless it lost much of its support. */
function better(before: Start, after: Start): Start {
  return after.score >= 0.8 * before.score ? after : before;
}

/** TL, TR, BR, BL of the work rectangle in stone mm. */
export function rectangleCorners([widthMm, heightMm]: Point): Corners {
  return [
    [0, 0],
    [widthMm, 0],
    [widthMm, heightMm],
    [0, heightMm],
  ];
}

function startFrame([widthMm, heightMm]: Point): Frame {
  const pxPerMm = longSidePx / Math.max(widthMm, heightMm);
  const marginPx = Math.round(roomMm * pxPerMm);
  return {
    widthPx: Math.round(widthMm * pxPerMm) + 2 * marginPx,
    heightPx: Math.round(heightMm * pxPerMm) + 2 * marginPx,
    pxPerMm,
    originMm: [-marginPx / pxPerMm, -marginPx / pxPerMm],
  };
}

/** A homography among frame px as one among stone mm. */
function inMillimetres(mend: Homography, frame: Frame): Homography {
  const { pxPerMm, originMm } = frame;
  const toMm: Homography = [1 / pxPerMm, 0, originMm[0], 0, 1 / pxPerMm, originMm[1], 0, 0, 1];
  const toPx: Homography = [pxPerMm, 0, -originMm[0] * pxPerMm, 0, pxPerMm, -originMm[1] * pxPerMm, 0, 0, 1];
  return composeHomographies(composeHomographies(toMm, mend), toPx);
}

function eightOrders([a, b, c, d]: Corners): Corners[] {
  const turns = (corners: readonly Point[]): Corners[] =>
    [0, 1, 2, 3].map((turn) => [0, 1, 2, 3].map((i) => corners[(i + turn) % 4]!) as unknown as Corners);
  return [...turns([a, b, c, d]), ...turns([b, a, d, c])];
}
