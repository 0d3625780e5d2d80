import { seededRandom } from '../../foundation/random.ts';
import { type Homography, homographyFromPoints } from '../../science/geometry/homography.ts';
import type { Point } from '../../science/geometry/point.ts';
import type { ShiftSurface } from './shiftSurface.ts';

/** What the tiles of one start agree on. */
export interface Agreement {
  /** Sum over tiles of how far the agreed shift stands above chance. */
  readonly score: number;
  /**
   * Sum over tiles of how far the agreed shift stands above every other shift of that tile: what speaks for this place
   * and no other. A grid that fits at every period adds nothing.
   */
  readonly distinct: number;
  /** Tiles that take part. */
  readonly supporters: number;
  readonly tiles: number;
  /** From frame px to where the content was found, in frame px. */
  readonly mend: Homography;
}

/** Below this height a place on a surface is what chance gives within the slack. */
const chanceHeight = 3.4;

/** One tile counts for no more than this, so that a few sharp ones can't outvote the rest. */
const mostPerTile = 8;

const rounds = 600;

function heightAt(surface: ShiftSurface, dx: number, dy: number): number {
  const { radius } = surface;
  const column = Math.round(dx);
  const row = Math.round(dy);
  if (Math.abs(column) > radius || Math.abs(row) > radius) return 0;
  return surface.spread[(row + radius) * (2 * radius + 1) + column + radius]!;
}

interface Peak {
  readonly tile: number;
  readonly dx: number;
  readonly dy: number;
  readonly height: number;
}

/** The three highest places of a surface that are apart from each other. */
function peaksOf(surface: ShiftSurface, tile: number): Peak[] {
  const span = 2 * surface.radius + 1;
  const peaks: Peak[] = [];
  for (let k = 0; k < 3; k++) {
    let best: Peak | null = null;
    for (let i = 0; i < surface.values.length; i++) {
      const height = surface.values[i]!;
      if (best && height <= best.height) continue;
      const dx = (i % span) - surface.radius;
      const dy = Math.floor(i / span) - surface.radius;
      if (peaks.some((peak) => Math.abs(peak.dx - dx) < 4 && Math.abs(peak.dy - dy) < 4)) continue;
      best = { tile, dx, dy, height };
    }
    if (best) peaks.push(best);
  }
  return peaks.filter((peak) => peak.height > chanceHeight);
}

/** Six numbers: dx = a + b x + c y, dy = d + e x + f y through three peaks; null where their tiles are in line. */
function straightThrough(surfaces: readonly ShiftSurface[], three: readonly Peak[]): number[] | null {
  const [p, q, r] = three.map((peak) => surfaces[peak.tile]!) as [ShiftSurface, ShiftSurface, ShiftSurface];
  const determinant = (q.x - p.x) * (r.y - p.y) - (r.x - p.x) * (q.y - p.y);
  const reach = Math.max(Math.abs(q.x - p.x), Math.abs(r.x - p.x), Math.abs(q.y - p.y), Math.abs(r.y - p.y));
  if (Math.abs(determinant) < 0.15 * reach * reach || reach === 0) return null;
  const solve = (v: readonly number[]): number[] => {
    const b = ((v[1]! - v[0]!) * (r.y - p.y) - (v[2]! - v[0]!) * (q.y - p.y)) / determinant;
    const c = ((q.x - p.x) * (v[2]! - v[0]!) - (r.x - p.x) * (v[1]! - v[0]!)) / determinant;
    return [v[0]! - b * p.x - c * p.y, b, c];
  };
  return [...solve(three.map((peak) => peak.dx)), ...solve(three.map((peak) => peak.dy))];
}

function scoreOf(surfaces: readonly ShiftSurface[], [a, b, c, d, e, f]: readonly number[]): number {
  let score = 0;
  for (const surface of surfaces) {
    const height = heightAt(
      surface,
      a! + b! * surface.x + c! * surface.y,
      d! + e! * surface.x + f! * surface.y,
    );
    if (height > chanceHeight) score += Math.min(height, mostPerTile) - chanceHeight;
  }
  return score;
}

/**
 * Finds the straight field of shifts on which most tiles agree, by drawing three peaks at a time, then bends it to a
 * homography on the supporters' own peaks. Shifts beyond `reach` px at the frame's corners are not believed.
 * Deterministic: the draw is seeded.
 */
export function agreementOf(
  surfaces: readonly ShiftSurface[],
  widthPx: number,
  heightPx: number,
  reach: number,
  slack: number,
): Agreement {
  const nothing: Agreement = {
    score: 0,
    distinct: 0,
    supporters: 0,
    tiles: surfaces.length,
    mend: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  };
  const peaks = surfaces.flatMap(peaksOf);
  const tilesWithPeaks = new Set(peaks.map((peak) => peak.tile)).size;
  if (tilesWithPeaks < 3) return nothing;
  const random = seededRandom(peaks.length);
  const corners: Point[] = [
    [0, 0],
    [widthPx, 0],
    [0, heightPx],
    [widthPx, heightPx],
  ];
  const believable = (m: readonly number[]): boolean =>
    corners.every(
      ([x, y]) => Math.hypot(m[0]! + m[1]! * x + m[2]! * y, m[3]! + m[4]! * x + m[5]! * y) <= reach,
    );
  let best: number[] = [0, 0, 0, 0, 0, 0];
  let bestScore = scoreOf(surfaces, best);
  const consider = (model: number[] | null): void => {
    if (!model || !believable(model)) return;
    const score = scoreOf(surfaces, model);
    if (score > bestScore) {
      best = model;
      bestScore = score;
    }
  };
  for (const peak of peaks) consider([peak.dx, 0, 0, peak.dy, 0, 0]);
  for (let round = 0; round < rounds; round++) {
    const three = [0, 1, 2].map(() => peaks[Math.floor(random() * peaks.length)]!);
    consider(straightThrough(surfaces, three));
  }
  return {
    ...bendToHomography(surfaces, best, slack),
    score: bestScore,
    distinct: distinctScore(surfaces, best, slack),
    tiles: surfaces.length,
  };
}

function distinctScore(
  surfaces: readonly ShiftSurface[],
  [a, b, c, d, e, f]: readonly number[],
  slack: number,
): number {
  let score = 0;
  for (const surface of surfaces) {
    const dx = a! + b! * surface.x + c! * surface.y;
    const dy = d! + e! * surface.x + f! * surface.y;
    const agreed = heightAt(surface, dx, dy);
    if (agreed <= chanceHeight) continue;
    const elsewhere = highestElsewhere(surface, dx, dy, slack + 2);
    score += Math.max(0, Math.min(agreed - elsewhere, mostPerTile - chanceHeight));
  }
  return score;
}

function highestElsewhere({ radius, values }: ShiftSurface, dx: number, dy: number, apart: number): number {
  let best = chanceHeight;
  for (let y = -radius, i = 0; y <= radius; y++) {
    for (let x = -radius; x <= radius; x++, i++) {
      if (values[i]! > best && (Math.abs(x - dx) > apart || Math.abs(y - dy) > apart)) best = values[i]!;
    }
  }
  return best;
}

/** The highest place of a surface within `slack` of a shift, to a fraction of a px by parabolas. */
function nearestPeak(surface: ShiftSurface, dx: number, dy: number, slack: number): Peak | null {
  const { radius, values } = surface;
  const span = 2 * radius + 1;
  let best: Peak | null = null;
  for (let y = Math.round(dy) - slack; y <= Math.round(dy) + slack; y++) {
    for (let x = Math.round(dx) - slack; x <= Math.round(dx) + slack; x++) {
      if (Math.abs(x) >= radius || Math.abs(y) >= radius) continue;
      const height = values[(y + radius) * span + x + radius]!;
      if (!best || height > best.height) best = { tile: 0, dx: x, dy: y, height };
    }
  }
  if (!best) return null;
  const at = (best.dy + radius) * span + best.dx + radius;
  const vertex = (before: number, after: number): number => {
    const bend = before + after - 2 * best.height;
    return bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / bend)) : 0;
  };
  return {
    ...best,
    dx: best.dx + vertex(values[at - 1]!, values[at + 1]!),
    dy: best.dy + vertex(values[at - span]!, values[at + span]!),
  };
}

function bendToHomography(
  surfaces: readonly ShiftSurface[],
  [a, b, c, d, e, f]: readonly number[],
  slack: number,
): { mend: Homography; supporters: number } {
  const from: Point[] = [];
  const to: Point[] = [];
  const weights: number[] = [];
  for (const surface of surfaces) {
    const dx = a! + b! * surface.x + c! * surface.y;
    const dy = d! + e! * surface.x + f! * surface.y;
    const peak = nearestPeak(surface, dx, dy, slack);
    if (!peak || peak.height <= chanceHeight) continue;
    from.push([surface.x, surface.y]);
    to.push([surface.x + peak.dx, surface.y + peak.dy]);
    weights.push((Math.min(peak.height, mostPerTile) - chanceHeight) ** 2);
  }
  const straight: Homography = [1 + b!, c!, a!, e!, 1 + f!, d!, 0, 0, 1];
  const supporters = from.length;
  // Few points would let the perspective terms run wild; then the straight field is the safer guess.
  const mend = supporters >= 8 ? robustHomography(from, to, weights) : null;
  return { mend: mend ?? straight, supporters };
}

/** Iteratively reweighted least squares with the Geman–McClure weight at a scale of 1.5 px. */
function robustHomography(
  from: readonly Point[],
  to: readonly Point[],
  weights: readonly number[],
): Homography | null {
  let current = weights.slice();
  let h: Homography | null = null;
  for (let round = 0; round < 8; round++) {
    h = homographyFromPoints(from, to, current);
    if (!h) return null;
    const fitted = h;
    current = weights.map((weight, i) => {
      const [x, y] = from[i]!;
      const w = fitted[6]! * x + fitted[7]! * y + 1;
      const dx = (fitted[0]! * x + fitted[1]! * y + fitted[2]!) / w - to[i]![0];
      const dy = (fitted[3]! * x + fitted[4]! * y + fitted[5]!) / w - to[i]![1];
      return weight / (1 + (dx * dx + dy * dy) / 2.25) ** 2;
    });
  }
  return h;
}
