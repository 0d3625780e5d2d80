import type { Change } from '../../records/comparison.ts';

/** A repeating mark, in tile units (1 unit = 1 px at scale 1). Plain data, for SVG, canvas and PDF alike. */
export interface HatchTile {
  readonly width: number;
  readonly height: number;
  /** Straight strokes x1, y1, x2, y2 inside the tile; they meet those of neighbouring tiles. */
  readonly strokes: readonly (readonly [number, number, number, number])[];
  /** Circles x, y, radius inside the tile. */
  readonly rings: readonly (readonly [number, number, number])[];
  readonly dots: readonly (readonly [number, number, number])[];
  readonly strokeWidth: number;
}

const empty = { strokes: [], rings: [], dots: [], strokeWidth: 1 } as const;

/**
 * One mark for each change, told apart without colour and after photocopying: rings (empty: nothing
 * came) for lost, crossed lines for filled, bold staggered dashes for scum, wide falling lines for lighter, close rising
 * lines for darker, fine dots for undecided; held stays blank.
 */
export const hatchTiles: Readonly<Record<Change, HatchTile>> = {
  held: { ...empty, width: 8, height: 8 },
  lost: { ...empty, width: 8, height: 8, rings: [[4, 4, 2.4]], strokeWidth: 1.2 },
  filled: {
    ...empty,
    width: 5,
    height: 5,
    strokes: [
      [0, 0, 5, 5],
      [0, 5, 5, 0],
    ],
    strokeWidth: 1.3,
  },
  scum: {
    ...empty,
    width: 10,
    height: 10,
    strokes: [
      [1, 3, 6, 3],
      [6, 8, 10, 8],
      [0, 8, 1, 8],
    ],
    strokeWidth: 1.8,
  },
  lighter: { ...empty, width: 9, height: 9, strokes: [[0, 0, 9, 9]], strokeWidth: 1 },
  darker: { ...empty, width: 4.5, height: 4.5, strokes: [[0, 4.5, 4.5, 0]], strokeWidth: 1.1 },
  undecided: { ...empty, width: 7, height: 7, dots: [[3.5, 3.5, 0.9]] },
};

/** The order of the legend: what is wrong first. */
export const hatchOrder: readonly Change[] = [
  'lost',
  'filled',
  'scum',
  'lighter',
  'darker',
  'undecided',
  'held',
];

/**
 * One hatch as an SVG `<pattern>` element, to be put into `<defs>` and used as `fill="url(#id)"`.
 * @param id must be unique on the page. @param scale tile units to user units, > 0.
 */
export function hatchPatternSvg(change: Change, id: string, ink: string, scale = 1): string {
  const tile = hatchTiles[change];
  return (
    `<pattern id="${id}" width="${tile.width}" height="${tile.height}" patternUnits="userSpaceOnUse"` +
    ` patternTransform="scale(${scale})">${tileMarks(tile, ink, 0, 0)}</pattern>`
  );
}

/**
 * A rectangle filled with a hatch, drawn as plain marks under a clip so that it looks the same in a
 * browser, in a PDF and after copying. All lengths in user units; `clipId` must be unique on the page.
 */
export function hatchedRectangleSvg(
  change: Change,
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  ink: string,
  clipId: string,
): string {
  const tile = hatchTiles[change];
  const marks: string[] = [];
  for (let y = 0; y < box.height; y += tile.height) {
    for (let x = 0; x < box.width; x += tile.width) marks.push(tileMarks(tile, ink, box.x + x, box.y + y));
  }
  const shape = `x="${box.x}" y="${box.y}" width="${box.width}" height="${box.height}"`;
  return (
    `<clipPath id="${clipId}"><rect ${shape}/></clipPath><g clip-path="url(#${clipId})">${marks.join('')}</g>` +
    `<rect ${shape} fill="none" stroke="${ink}" stroke-width="0.75"/>`
  );
}

/**
 * Whether a hatch puts ink at a place, for painting it into a raster. `x`, `y` in tile units from the
 * raster's own origin, of any sign; held is never marked.
 */
export function hatchMarksAt(change: Change, x: number, y: number): boolean {
  const tile = hatchTiles[change];
  const u = x - Math.floor(x / tile.width) * tile.width;
  const v = y - Math.floor(y / tile.height) * tile.height;
  const half = tile.strokeWidth / 2;
  return (
    tile.dots.some(([cx, cy, radius]) => Math.hypot(u - cx, v - cy) <= radius) ||
    tile.rings.some(([cx, cy, radius]) => Math.abs(Math.hypot(u - cx, v - cy) - radius) <= half) ||
    tile.strokes.some((stroke) => distanceToStroke(u, v, stroke) <= half)
  );
}

function distanceToStroke(u: number, v: number, stroke: HatchTile['strokes'][number]): number {
  const [x1, y1, x2, y2] = stroke;
  const lengthSquared = (x2 - x1) ** 2 + (y2 - y1) ** 2;
  const along = Math.min(1, Math.max(0, ((u - x1) * (x2 - x1) + (v - y1) * (y2 - y1)) / lengthSquared));
  return Math.hypot(u - x1 - along * (x2 - x1), v - y1 - along * (y2 - y1));
}

function tileMarks(tile: HatchTile, ink: string, left: number, top: number): string {
  const at = (value: number) => String(Math.round(value * 100) / 100);
  const strokes = tile.strokes
    .map(([x1, y1, x2, y2]) => `M${at(left + x1)} ${at(top + y1)}L${at(left + x2)} ${at(top + y2)}`)
    .join('');
  return (
    (strokes ? `<path d="${strokes}" stroke="${ink}" stroke-width="${tile.strokeWidth}" fill="none"/>` : '') +
    tile.rings
      .map(
        ([cx, cy, radius]) =>
          `<circle cx="${at(left + cx)}" cy="${at(top + cy)}" r="${radius}" fill="none" stroke="${ink}"` +
          ` stroke-width="${tile.strokeWidth}"/>`,
      )
      .join('') +
    tile.dots
      .map(
        ([cx, cy, radius]) =>
          `<circle cx="${at(left + cx)}" cy="${at(top + cy)}" r="${radius}" fill="${ink}"/>`,
      )
      .join('')
  );
}
