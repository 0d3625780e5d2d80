import { type Random, seededRandom } from '../../foundation/random.ts';
import type { Point } from '../../science/geometry/point.ts';
import { type NoiseField, noiseField } from './noise.ts';

/** How etching, inking and pulling change a tone. All 0..1. */
export interface ToneTransfer {
  /** Tones below the first vanish; between first and second they come back smoothly. */
  readonly lightsLost: readonly [gone: number, back: number];
  /** Tones above the first close; from the second on they are full. */
  readonly darksClosed: readonly [open: number, shut: number];
  /** Growth of the middles: added gain · 4 t (1 − t). */
  readonly gain: number;
  /** What a full film reaches on the print: below 1 where deep grain stays white. */
  readonly full: number;
}

export const faithfulTransfer: ToneTransfer = {
  lightsLost: [0, 0.0001],
  darksClosed: [1, 1.0001],
  gain: 0,
  full: 0.99,
};

/** The printed tone of a drawn tone. */
export function transferTone(transfer: ToneTransfer, drawn: number): number {
  if (drawn <= 0) return 0;
  const grown = Math.min(1, drawn + transfer.gain * 4 * drawn * (1 - drawn));
  const kept = smoothStep(transfer.lightsLost[0], transfer.lightsLost[1], drawn);
  const closed = smoothStep(transfer.darksClosed[0], transfer.darksClosed[1], drawn);
  return Math.min(transfer.full, grown * kept * (1 - closed) + closed);
}

function smoothStep(from: number, to: number, value: number): number {
  const t = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return t * t * (3 - 2 * t);
}

/** A blot where printing failed. `amount` is the share lost or closed, or the coverage of the scum. */
export interface Patch {
  readonly kind: 'lost' | 'closed' | 'scum';
  readonly centreMm: Point;
  readonly radiiMm: Point;
  readonly amount: number;
}

export interface Damage {
  readonly patches: readonly Patch[];
  /** Scum along some sides (of the stone), falling off to nothing `reachMm` inside the work rectangle; null for none. */
  readonly edgeScum: {
    readonly coverage: number;
    readonly reachMm: number;
    readonly sides: readonly ('left' | 'top' | 'right' | 'bottom')[];
  } | null;
  /** The same faint scum over every bare place, 0..1. */
  readonly uniformScum: number;
}

export const noDamage: Damage = { patches: [], edgeScum: null, uniformScum: 0 };

/** Damage on a raster of 2 cells a mm over the work rectangle and its border. */
export interface DamageField {
  readonly columns: number;
  readonly rows: number;
  readonly cellsPerMm: number;
  readonly originMm: Point;
  readonly lost: Float32Array;
  readonly closed: Float32Array;
  readonly scum: Float32Array;
}

const cellsPerMm = 2;

/** Lays out where tones were lost or closed, or bare stone took ink, with ragged outlines about 2 mm soft. */
export function damageField(damage: Damage, sizeMm: Point, borderMm: number, seed: number): DamageField {
  const random: Random = seededRandom(seed);
  const columns = Math.round((sizeMm[0] + 2 * borderMm) * cellsPerMm);
  const rows = Math.round((sizeMm[1] + 2 * borderMm) * cellsPerMm);
  const wobble = noiseField(random, columns, rows, cellsPerMm, [
    [18, 1],
    [6, 0.5],
  ]);
  const field: DamageField = {
    columns,
    rows,
    cellsPerMm,
    originMm: [-borderMm, -borderMm],
    lost: new Float32Array(columns * rows),
    closed: new Float32Array(columns * rows),
    scum: new Float32Array(columns * rows),
  };
  if (damage.uniformScum > 0) addUniformScum(field, damage.uniformScum, sizeMm);
  if (damage.edgeScum) addEdgeScum(field, damage.edgeScum, sizeMm, wobble);
  for (const patch of damage.patches) addPatch(field, patch, wobble);
  return field;
}

function addPatch(field: DamageField, patch: Patch, wobble: NoiseField): void {
  const plane = field[patch.kind];
  const reach = Math.min(patch.radiiMm[0], patch.radiiMm[1]);
  for (let row = 0; row < field.rows; row++) {
    const yMm = (row + 0.5) / cellsPerMm + field.originMm[1];
    const dy = (yMm - patch.centreMm[1]) / patch.radiiMm[1];
    if (Math.abs(dy) > 1.6) continue;
    for (let column = 0; column < field.columns; column++) {
      const xMm = (column + 0.5) / cellsPerMm + field.originMm[0];
      const dx = (xMm - patch.centreMm[0]) / patch.radiiMm[0];
      const cell = row * field.columns + column;
      const insideMm = (1 - Math.hypot(dx, dy) + 0.1 * wobble.data[cell]!) * reach;
      const share = patch.amount * smoothStep(-1, 1, insideMm);
      if (share > plane[cell]!) plane[cell] = share;
    }
  }
}

/** The same everywhere, thinning out at the rim of the painted border. */
function addUniformScum(field: DamageField, coverage: number, sizeMm: Point): void {
  for (let row = 0; row < field.rows; row++) {
    const yMm = (row + 0.5) / cellsPerMm + field.originMm[1];
    for (let column = 0; column < field.columns; column++) {
      const xMm = (column + 0.5) / cellsPerMm + field.originMm[0];
      const insideMm = Math.min(xMm, yMm, sizeMm[0] - xMm, sizeMm[1] - yMm);
      const outer = smoothStep(field.originMm[0] + 2, field.originMm[0] + 12, insideMm);
      field.scum[row * field.columns + column] = coverage * outer;
    }
  }
}

function addEdgeScum(
  field: DamageField,
  edge: NonNullable<Damage['edgeScum']>,
  sizeMm: Point,
  wobble: NoiseField,
): void {
  for (let row = 0; row < field.rows; row++) {
    const yMm = (row + 0.5) / cellsPerMm + field.originMm[1];
    for (let column = 0; column < field.columns; column++) {
      const xMm = (column + 0.5) / cellsPerMm + field.originMm[0];
      const cell = row * field.columns + column;
      const fromMm = { left: xMm, top: yMm, right: sizeMm[0] - xMm, bottom: sizeMm[1] - yMm };
      const insideMm = Math.min(...edge.sides.map((side) => fromMm[side])) + 2.5 * wobble.data[cell]!;
      // It thins out again towards the rim of the painted border, so that it never ends in a line.
      const outer = smoothStep(field.originMm[0] + 2, field.originMm[0] + 12, insideMm);
      const share = edge.coverage * outer * (1 - smoothStep(edge.reachMm - 3, edge.reachMm + 1, insideMm));
      if (share > field.scum[cell]!) field.scum[cell] = share;
    }
  }
}

/** Bilinear value of one of the planes at stone mm; the rim's value beyond the field. */
export function damageAt(field: DamageField, plane: Float32Array, xMm: number, yMm: number): number {
  const x = Math.min(field.columns - 1.001, Math.max(0, (xMm - field.originMm[0]) * field.cellsPerMm - 0.5));
  const y = Math.min(field.rows - 1.001, Math.max(0, (yMm - field.originMm[1]) * field.cellsPerMm - 0.5));
  const left = x | 0;
  const cell = (y | 0) * field.columns + left;
  const fx = x - left;
  const fy = y - (y | 0);
  const upper = plane[cell]! * (1 - fx) + plane[cell + 1]! * fx;
  const lower = plane[cell + field.columns]! * (1 - fx) + plane[cell + field.columns + 1]! * fx;
  return upper * (1 - fy) + lower * fy;
}
