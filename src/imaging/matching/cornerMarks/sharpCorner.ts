import type { Point } from '../../../science/geometry/point.ts';
import { median } from '../../../science/statistics/quantile.ts';
import type { Photograph } from '../../photograph.ts';
import type { RightAngle } from './rightAngle.ts';

/** Places along an arm at which its edge is looked for, in shares of its length from the corner. */
const along = [0.22, 0.3, 0.38, 0.46, 0.54, 0.62, 0.7, 0.78, 0.86];

/**
 * The marked corner to a fraction of a px: the edge of either arm is found at several places where the light is halfway
 * between mark and ground, a line is laid through them, and the two lines are crossed.
 * @returns photograph px; the rough place where an edge can't be seen.
 */
export function sharpCorner(photo: Photograph, angle: RightAngle): Point {
  const across: Point = angle.corner === 0 || angle.corner === 3 ? [1, 0] : [-1, 0];
  const down: Point = angle.corner === 0 || angle.corner === 1 ? [0, 1] : [0, -1];
  const first = edgeLine(photo, angle, across, down, angle.armsPx[0]);
  const second = edgeLine(photo, angle, down, across, angle.armsPx[1]);
  const crossed = first && second && crossing(first, second);
  if (!crossed) return angle.atPx;
  const moved = Math.hypot(crossed[0] - angle.atPx[0], crossed[1] - angle.atPx[1]);
  return moved <= 2 * angle.strokePx ? crossed : angle.atPx;
}

type Line = { readonly at: Point; readonly towards: Point };

/** The edge of the arm that runs `towards`; `inwards` points from the edge into the drawing. */
function edgeLine(
  photo: Photograph,
  angle: RightAngle,
  towards: Point,
  inwards: Point,
  armPx: number,
): Line | null {
  const reach = 1.6 * angle.strokePx + 3;
  // From the ground into the mark: outwards in for drawn strokes, from the drawing out for bars laid round it.
  const sign = angle.edge === 'outer' ? 1 : -1;
  const points = along.flatMap((share): Point[] => {
    const base: Point = [
      angle.atPx[0] + towards[0] * share * armPx,
      angle.atPx[1] + towards[1] * share * armPx,
    ];
    const profile: number[] = [];
    for (let t = -reach; t <= reach; t += 0.5)
      profile.push(lightAt(photo, base[0] + inwards[0] * t * sign, base[1] + inwards[1] * t * sign));
    const darkest = Math.min(...profile);
    const end = profile.indexOf(darkest);
    const bright = Math.max(...profile.slice(0, Math.max(1, end)));
    if (darkest > 0.75 * bright) return [];
    const half = (darkest + bright) / 2;
    for (let i = end; i > 0; i--) {
      if (profile[i]! > half || profile[i - 1]! <= half) continue;
      const t = -reach + 0.5 * (i - 1 + (profile[i - 1]! - half) / (profile[i - 1]! - profile[i]!));
      return [[base[0] + inwards[0] * t * sign, base[1] + inwards[1] * t * sign]];
    }
    return [];
  });
  return points.length >= 5 ? lineThrough(points, towards) : null;
}

/** Median of the slopes between all pairs (Sen 1968, doi 10.1080/01621459.1968.10480934), through the median offset. */
function lineThrough(points: readonly Point[], towards: Point): Line {
  const axis = towards[0] !== 0 ? 0 : 1;
  const other = axis === 0 ? 1 : 0;
  const slopes = points.flatMap((a, i) =>
    points.slice(i + 1).map((b) => (b[other] - a[other]) / (b[axis] - a[axis])),
  );
  const slope = median(slopes);
  const offset = median(points.map((point) => point[other] - slope * point[axis]));
  return axis === 0 ? { at: [0, offset], towards: [1, slope] } : { at: [offset, 0], towards: [slope, 1] };
}

function crossing(first: Line, second: Line): Point | null {
  const determinant = first.towards[0] * second.towards[1] - first.towards[1] * second.towards[0];
  if (Math.abs(determinant) < 1e-6) return null;
  const [dx, dy] = [second.at[0] - first.at[0], second.at[1] - first.at[1]];
  const t = (dx * second.towards[1] - dy * second.towards[0]) / determinant;
  return [first.at[0] + t * first.towards[0], first.at[1] + t * first.towards[1]];
}

/** Linear green light between pixel centres. */
function lightAt(photo: Photograph, x: number, y: number): number {
  const px = Math.min(Math.max(x - 0.5, 0), photo.widthPx - 1.001);
  const py = Math.min(Math.max(y - 0.5, 0), photo.heightPx - 1.001);
  const [left, top] = [Math.floor(px), Math.floor(py)];
  const [fx, fy] = [px - left, py - top];
  const { codes, channels, widthPx, toLinear } = photo;
  const at = (column: number, row: number) =>
    toLinear[codes[(row * widthPx + column) * channels + (channels === 3 ? 1 : 0)]!]!;
  const upper = at(left, top) * (1 - fx) + at(left + 1, top) * fx;
  const lower = at(left, top + 1) * (1 - fx) + at(left + 1, top + 1) * fx;
  return upper * (1 - fy) + lower * fy;
}
