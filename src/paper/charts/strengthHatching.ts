import type { EtchStrength } from '../../records/etchStrength.ts';
import type { Point } from '../../science/geometry/point.ts';

/** Parallel lines, whole or broken, in printed mm. */
export interface HatchLines {
  /** From the x axis, clockwise as seen. */
  readonly angleDegrees: number;
  readonly spacingMm: number;
  readonly widthMm: number;
  /** Length of a dash and of the gap after it, staggered from line to line; null: unbroken. */
  readonly dashMm: readonly [number, number] | null;
}

/** An axis-parallel box in the space of what it bounds. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * One mark for each strength, told apart without colour and after photocopying, the denser the stronger: dots for the
 * ground, dashes for scant, wide falling lines for light, close rising lines for middle, bold crossed ones for dark.
 */
export const strengthHatches: Readonly<Record<EtchStrength, readonly HatchLines[]>> = {
  ground: [{ angleDegrees: 0, spacingMm: 6, widthMm: 0.55, dashMm: [0.55, 6.45] }],
  scant: [{ angleDegrees: 0, spacingMm: 3.5, widthMm: 0.35, dashMm: [4, 3] }],
  light: [{ angleDegrees: 45, spacingMm: 5, widthMm: 0.3, dashMm: null }],
  middle: [{ angleDegrees: -45, spacingMm: 2.4, widthMm: 0.4, dashMm: null }],
  dark: [
    { angleDegrees: 45, spacingMm: 2.6, widthMm: 0.7, dashMm: null },
    { angleDegrees: -45, spacingMm: 2.6, widthMm: 0.7, dashMm: null },
  ],
};

/**
 * A place filled with a strength's hatch, as SVG paths of plain strokes. Lines are anchored to the origin, so that
 * pictures of neighbouring windows meet.
 * @param rings in user units; a place inside an odd number of them is filled.
 * @param unit user units for one printed mm, above 0. @param within nothing outside this box is drawn.
 */
export function hatchedPlaceSvg(
  strength: EtchStrength,
  rings: readonly (readonly Point[])[],
  ink: string,
  unit: number,
  within: Box,
): string {
  return strengthHatches[strength]
    .map((lines) => {
      const strokes = hatchStrokes(lines, rings, unit, within);
      if (strokes.length === 0) return '';
      const path = strokes.map(([from, to]) => `M${at(from)}L${at(to)}`).join('');
      return `<path d="${path}" stroke="${ink}" stroke-width="${round(lines.widthMm * unit)}" fill="none"/>`;
    })
    .join('');
}

function hatchStrokes(
  lines: HatchLines,
  rings: readonly (readonly Point[])[],
  unit: number,
  within: Box,
): (readonly [Point, Point])[] {
  const turn = (lines.angleDegrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const back = (x: number, y: number): Point => [x * cos - y * sin, x * sin + y * cos];
  const turned = rings.map((ring) => ring.map(([x, y]): Point => [x * cos + y * sin, y * cos - x * sin]));
  const spacing = lines.spacingMm * unit;
  const heights = turned.flat().map(([, y]) => y);
  const first = Math.ceil(Math.min(...heights) / spacing);
  const last = Math.floor(Math.max(...heights) / spacing);
  const strokes: (readonly [Point, Point])[] = [];
  for (let line = first; line <= last; line++) {
    const y = line * spacing;
    const crossings = turned.flatMap((ring) => crossingsAt(ring, y)).sort((a, b) => a - b);
    for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
      const [from, to] = [back(crossings[pair]!, y), back(crossings[pair + 1]!, y)];
      const kept = clippedToBox(from, to, within);
      if (!kept) continue;
      const along = ([px, py]: Point) => px * cos + py * sin;
      for (const [start, end] of dashes(along(kept[0]), along(kept[1]), lines.dashMm, unit, line)) {
        strokes.push([back(start, y), back(end, y)]);
      }
    }
  }
  return strokes;
}

function crossingsAt(ring: readonly Point[], y: number): number[] {
  return ring.flatMap(([x1, y1], index) => {
    const [x2, y2] = ring[(index + 1) % ring.length]!;
    return y1 > y === y2 > y ? [] : [x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)];
  });
}

/** The dashes of one line between two places along it, counted from the origin, every other line half a step on. */
function dashes(
  from: number,
  to: number,
  dashMm: HatchLines['dashMm'],
  unit: number,
  line: number,
): (readonly [number, number])[] {
  if (!dashMm) return [[from, to]];
  const length = dashMm[0] * unit;
  const step = (dashMm[0] + dashMm[1]) * unit;
  const shift = line % 2 === 0 ? 0 : step / 2;
  const found: (readonly [number, number])[] = [];
  for (let index = Math.floor((from - shift) / step); index * step + shift < to; index++) {
    const start = Math.max(from, index * step + shift);
    const end = Math.min(to, index * step + shift + length);
    if (end > start) found.push([start, end]);
  }
  return found;
}

/** The part of a segment inside a box (Liang–Barsky); null where none is. */
function clippedToBox(from: Point, to: Point, box: Box): readonly [Point, Point] | null {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  let [start, end] = [0, 1];
  const limits: readonly (readonly [number, number])[] = [
    [-dx, from[0] - box.left],
    [dx, box.right - from[0]],
    [-dy, from[1] - box.top],
    [dy, box.bottom - from[1]],
  ];
  for (const [slope, room] of limits) {
    if (slope === 0 && room < 0) return null;
    if (slope < 0) start = Math.max(start, room / slope);
    if (slope > 0) end = Math.min(end, room / slope);
  }
  if (start >= end) return null;
  return [
    [from[0] + start * dx, from[1] + start * dy],
    [from[0] + end * dx, from[1] + end * dy],
  ];
}

function at([x, y]: Point): string {
  return `${round(x)} ${round(y)}`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
