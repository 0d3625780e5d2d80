import { seededRandom } from '../../foundation/random.ts';
import type { ComparisonParameters, ToneCurve } from '../../records/comparison.ts';
import type { Zone } from '../../records/zone.ts';
import { isotonic } from '../../science/statistics/isotonic.ts';
import { quantile } from '../../science/statistics/quantile.ts';
import { signedDistance } from '../operations/signedDistance.ts';
import type { CoverageMap } from './coverageMaps.ts';

/** Means over 3 mm of drawn and printed coverage, and the block of 10 mm they lie in. */
interface Pair {
  readonly drawn: number;
  readonly printed: number;
  readonly block: number;
}

const cellMm = 3;
const blockMm = 10;
/** A band resting on fewer blocks is left out. */
const leastBlocks = 12;
/** Drawn tones at which the curve is given. */
const drawnSteps = Array.from({ length: 20 }, (_, i) => Math.round((0.03 + i * 0.05) * 100) / 100);
/** Width of the smoothing in drawn coverage. */
const kernelWidth = 0.06;
const resamples = 200;
/** Outlines are blurred over this far: cells nearer to them are left out. */
const edgeMm = 2;

/**
 * Printed on drawn coverage by medium: kernel means made monotone, with a 95 % band from resampling blocks of 10 mm
 * (Künsch 1989, doi 10.1214/aos/1176347265), so that grain near by does not pass for evidence.
 * Stop-outs, guide lines and bare places are left out.
 */
export function toneCurves(
  drawn: CoverageMap,
  printed: CoverageMap,
  zones: readonly Zone[],
  parameters: ComparisonParameters,
): ToneCurve[] {
  const byMedium = new Map<string, Zone[]>();
  for (const zone of zones) {
    const counted = zone.medium !== 'blank' && (zone.intention ?? 'drawn') === 'drawn';
    if (counted) byMedium.set(zone.medium, [...(byMedium.get(zone.medium) ?? []), zone]);
  }
  return [...byMedium].flatMap(([medium, own]) => {
    const pairs = own.flatMap((zone) => pairsIn(zone, drawn, printed));
    const curve = curveThrough(pairs);
    return curve.length === 0 ? [] : [{ medium, points: curve, ...passingPoints(curve, parameters) }];
  });
}

function pairsIn(zone: Zone, drawn: CoverageMap, printed: CoverageMap): Pair[] {
  const window = signedDistance(zone.polygonMm, drawn, 0);
  const step = Math.round(cellMm * drawn.pxPerMm);
  const pairs: Pair[] = [];
  for (let top = 0; top + step <= window.heightPx; top += step) {
    for (let left = 0; left + step <= window.widthPx; left += step) {
      const cell = meanIn(window, drawn, printed, left, top, step);
      if (cell) {
        const x = Math.floor((window.left + left) / drawn.pxPerMm / blockMm);
        const y = Math.floor((window.top + top) / drawn.pxPerMm / blockMm);
        pairs.push({ ...cell, block: y * 1000 + x });
      }
    }
  }
  return pairs;
}

function meanIn(
  window: ReturnType<typeof signedDistance>,
  drawn: CoverageMap,
  printed: CoverageMap,
  left: number,
  top: number,
  step: number,
): { drawn: number; printed: number } | null {
  let d = 0;
  let p = 0;
  for (let y = top; y < top + step; y++) {
    for (let x = left; x < left + step; x++) {
      if (window.distanceMm[y * window.widthPx + x]! > -edgeMm) return null;
      const i = (window.top + y) * drawn.widthPx + window.left + x;
      d += drawn.data[i]!;
      p += printed.data[i]!;
    }
  }
  const mean = { drawn: d / step ** 2, printed: p / step ** 2 };
  return Number.isNaN(mean.drawn + mean.printed) ? null : mean;
}

function curveThrough(pairs: readonly Pair[]): ToneCurve['points'] {
  const blocks = groupedByBlock(pairs);
  const steps = drawnSteps.filter(
    (at) =>
      new Set(pairs.filter((pair) => Math.abs(pair.drawn - at) <= kernelWidth).map((pair) => pair.block))
        .size >= leastBlocks,
  );
  if (steps.length === 0) return [];
  const moments = blocks.map((block) => steps.map((at) => momentsAt(block, at)));
  const smooth = (chosen: readonly (readonly Moments[])[]) =>
    isotonic(
      steps.map((_, i) => localLinear(chosen.map((block) => block[i]!))),
      null,
    );
  const middle = smooth(moments);
  const random = seededRandom(pairs.length);
  const drawsByStep: number[][] = steps.map(() => []);
  for (let round = 0; round < resamples; round++) {
    const own = blocks.map(() => moments[Math.floor(random() * blocks.length)]!);
    for (const [i, value] of smooth(own).entries()) if (!Number.isNaN(value)) drawsByStep[i]!.push(value);
  }
  return steps.map((at, i) => ({
    drawn: at,
    printed: clamped(middle[i]!),
    low: clamped(Math.min(middle[i]!, quantile(drawsByStep[i]!, 0.025))),
    high: clamped(Math.max(middle[i]!, quantile(drawsByStep[i]!, 0.975))),
  }));
}

function groupedByBlock(pairs: readonly Pair[]): (readonly Pair[])[] {
  const blocks = new Map<number, Pair[]>();
  for (const pair of pairs) {
    const own = blocks.get(pair.block);
    if (own) own.push(pair);
    else blocks.set(pair.block, [pair]);
  }
  return [...blocks.values()];
}

/** Weighted sums that a local line needs; those of several blocks simply add. */
type Moments = readonly [s0: number, s1: number, s2: number, t0: number, t1: number];

function momentsAt(pairs: readonly Pair[], at: number): Moments {
  let [s0, s1, s2, t0, t1] = [0, 0, 0, 0, 0];
  for (const pair of pairs) {
    const off = pair.drawn - at;
    if (Math.abs(off) > 3 * kernelWidth) continue;
    const weight = Math.exp((-off * off) / (2 * kernelWidth * kernelWidth));
    s0 += weight;
    s1 += weight * off;
    s2 += weight * off * off;
    t0 += weight * pair.printed;
    t1 += weight * off * pair.printed;
  }
  return [s0, s1, s2, t0, t1];
}

/** Local linear mean (Fan 1992, doi 10.1080/01621459.1992.10476255), which a slope in the data does not bias. */
function localLinear(blocks: readonly Moments[]): number {
  let [s0, s1, s2, t0, t1] = [0, 0, 0, 0, 0];
  for (const block of blocks) {
    s0 += block[0];
    s1 += block[1];
    s2 += block[2];
    t0 += block[3];
    t1 += block[4];
  }
  const determinant = s0 * s2 - s1 * s1;
  if (s0 === 0) return Number.NaN;
  return determinant > 1e-9 * s0 * s0 ? (s2 * t0 - s1 * t1) / determinant : t0 / s0;
}

/** Where the curve passes 0.4 of the drawn tone, and where it passes the filled limit; null where it never does. */
function passingPoints(points: ToneCurve['points'], parameters: ComparisonParameters) {
  const crossing = (height: (point: ToneCurve['points'][number]) => number): number | null => {
    for (let i = points.length - 1; i > 0; i--) {
      const before = height(points[i - 1]!);
      const after = height(points[i]!);
      if (before < 0 && after >= 0) {
        const share = -before / (after - before);
        return points[i - 1]!.drawn + share * (points[i]!.drawn - points[i - 1]!.drawn);
      }
    }
    return null;
  };
  return {
    lossPoint: crossing((point) => point.printed - parameters.lost.keptAtMost * point.drawn),
    fillPoint: crossing((point) => point.printed - parameters.filled.printedAtLeast),
  };
}

function clamped(coverage: number): number {
  return Math.min(1, Math.max(0, coverage));
}
