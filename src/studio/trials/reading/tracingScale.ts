import type { TestStone } from '../../../records/testStone.ts';
import { applyHomography, homographyFromPoints } from '../../../science/geometry/homography.ts';
import type { Corners, Point } from '../../../science/geometry/point.ts';

/** Setting two marks and four corners by hand is good to about this share. Our rule. */
const tolerance = 0.01;

/** What the ruler measures by the corners, over what it is: 1 where both agree; null without ruler or corners. */
export function tracingScale({
  drawn,
  ruler,
  sizeMm,
}: Pick<TestStone, 'drawn' | 'ruler' | 'sizeMm'>): number | null {
  const toMm = drawn?.corners ? mmOfPhotograph(drawn.corners, sizeMm) : null;
  if (ruler === null || toMm === null) return null;
  const [from, to] = [toMm(ruler.fromPx), toMm(ruler.toPx)];
  return Math.hypot(to[0] - from[0], to[1] - from[1]) / ruler.lengthMm;
}

/** Says in a sentence that ruler and corners disagree; null where they agree or one is missing. */
export function wrongScaleSentence(stone: Pick<TestStone, 'drawn' | 'ruler' | 'sizeMm'>): string | null {
  const scale = tracingScale(stone);
  if (scale === null || stone.ruler === null || Math.abs(scale - 1) <= tolerance) return null;
  const { lengthMm } = stone.ruler;
  const [width, height] = stone.sizeMm.map((side) => Math.round(side / scale));
  return (
    `The ruler’s ${lengthMm} mm measure ${(lengthMm * scale).toFixed(1)} mm between the corners: a tracing sheet with these ` +
    `corners was printed at ${Math.round(100 / scale)} %, not at true size, or the size is not ` +
    `${stone.sizeMm[0]} × ${stone.sizeMm[1]} mm. If patches lie where they should, give the size as ${width} × ${height} mm ` +
    'and lay the patches again; else print the tracing sheet again at 100 %.'
  );
}

function mmOfPhotograph(corners: Corners, [width, height]: Point): ((at: Point) => Point) | null {
  const frame: Corners = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const map = homographyFromPoints(corners, frame);
  return map && ((at) => applyHomography(map, at));
}

/** How many px of the photograph a mm takes, over the whole rectangle; null without corners. */
export function pxPerMm({ drawn, sizeMm }: Pick<TestStone, 'drawn' | 'sizeMm'>): number | null {
  if (!drawn?.corners) return null;
  const round = drawn.corners.reduce((sum, [x, y], index, all) => {
    const [nextX, nextY] = all[(index + 1) % 4]!;
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);
  return round / (2 * (sizeMm[0] + sizeMm[1]));
}
