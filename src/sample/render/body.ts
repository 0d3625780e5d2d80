import { seededRandom } from '../../foundation/random.ts';
import type { Point } from '../../science/geometry/point.ts';
import { type NoiseField, noiseField } from './noise.ts';

export type Colour = readonly [red: number, green: number, blue: number];

/** What lies on the table: a stone or a sheet, with its outline, bare colour and mottle. Plane mm. */
export interface Body {
  readonly kind: 'stone' | 'sheet';
  readonly leftMm: number;
  readonly topMm: number;
  readonly rightMm: number;
  readonly bottomMm: number;
  readonly cornerRadiusMm: number;
  /** How much of the body's lower side face the camera sees; 0 for a sheet. */
  readonly sideFaceMm: number;
  /** How far the outline wanders, and the noise by which it does. */
  readonly raggedMm: number;
  readonly sides: NoiseField;
  /** Linear reflectance of the bare ground. */
  readonly ground: Colour;
  readonly mottle: NoiseField;
  readonly mottleAmount: number;
  readonly fine: NoiseField;
  readonly fineAmount: number;
  /** Linear reflectance of ink or drawing matter. */
  readonly ink: Colour;
}

export type StoneColour = 'yellow' | 'grey';

const stoneGround: Readonly<Record<StoneColour, Colour>> = {
  yellow: [0.56, 0.5, 0.385],
  grey: [0.37, 0.365, 0.335],
};

interface BodyExtent {
  readonly sizeMm: Point;
  /** Bare margin beyond the work rectangle: left, top, right, bottom. Negative where the sheet misses it. */
  readonly marginsMm: readonly [number, number, number, number];
  readonly seed: number;
}

/** A limestone slab: rounded edges, clouds and small flecks. */
export function stoneBody(extent: BodyExtent, colour: StoneColour): Body {
  const random = seededRandom(extent.seed);
  return {
    kind: 'stone',
    ...outline(extent),
    cornerRadiusMm: 9,
    sideFaceMm: 6,
    raggedMm: 0.5,
    sides: noiseField(random, 1024, 1, 1, [
      [60, 1],
      [5, 0.35],
    ]),
    ground: stoneGround[colour],
    mottle: noiseField(random, 360, 400, 0.5, [
      [110, 1],
      [38, 0.6],
      [11, 0.25],
    ]),
    mottleAmount: 0.014,
    fine: noiseField(random, 331, 317, 5, [
      [0.35, 1],
      [1.3, 0.7],
    ]),
    fineAmount: 0.012,
    ink: [0.052, 0.048, 0.044],
  };
}

/** A sheet of mould-made paper with deckle edges. */
export function sheetBody(extent: BodyExtent): Body {
  const random = seededRandom(extent.seed);
  return {
    kind: 'sheet',
    ...outline(extent),
    cornerRadiusMm: 1.5,
    sideFaceMm: 0,
    raggedMm: 1.1,
    sides: noiseField(random, 1024, 1, 1, [
      [16, 1],
      [4, 0.6],
    ]),
    ground: [0.84, 0.815, 0.745],
    mottle: noiseField(random, 360, 400, 0.5, [
      [90, 1],
      [14, 0.5],
    ]),
    mottleAmount: 0.006,
    fine: noiseField(random, 331, 317, 5, [
      [0.3, 1],
      [1, 0.5],
    ]),
    fineAmount: 0.006,
    ink: [0.036, 0.033, 0.031],
  };
}

function outline({ sizeMm, marginsMm }: BodyExtent) {
  return {
    leftMm: -marginsMm[0],
    topMm: -marginsMm[1],
    rightMm: sizeMm[0] + marginsMm[2],
    bottomMm: sizeMm[1] + marginsMm[3],
  };
}

/** Distance in mm from the body's wandering outline: positive inside, negative outside. */
export function insideMm(body: Body, xMm: number, yMm: number): number {
  const alongX = sideShift(body, 0, xMm);
  const left = xMm - body.leftMm + sideShift(body, 1, yMm);
  const right = body.rightMm - xMm + sideShift(body, 2, yMm);
  const top = yMm - body.topMm + alongX;
  const bottom = body.bottomMm - yMm + sideShift(body, 3, xMm);
  const across = Math.min(left, right);
  const down = Math.min(top, bottom);
  const radius = body.cornerRadiusMm;
  if (across < radius && down < radius) return radius - Math.hypot(radius - across, radius - down);
  return Math.min(across, down);
}

/** Wander of one side at a place along it. */
function sideShift(body: Body, side: number, alongMm: number): number {
  const { columns, cellsPerMm, data } = body.sides;
  const place = (alongMm + 150 + side * 261.7) * cellsPerMm;
  const left = Math.floor(place);
  const cell = ((left % columns) + columns) % columns;
  const next = cell + 1 === columns ? 0 : cell + 1;
  const t = place - left;
  return body.raggedMm * (data[cell]! * (1 - t) + data[next]! * t);
}
