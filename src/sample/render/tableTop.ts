import { seededRandom } from '../../foundation/random.ts';
import type { Colour } from './body.ts';
import { type NoiseField, noiseAt, noiseField } from './noise.ts';

export type TableKind = 'slate' | 'planks' | 'felt';

/** What the object lies on. */
export interface TableTop {
  readonly kind: TableKind;
  readonly colour: Colour;
  readonly noise: NoiseField;
  /** Depth of the contact shadow at the object's edge. */
  readonly shadow: number;
}

const colours: Readonly<Record<TableKind, Colour>> = {
  slate: [0.1, 0.108, 0.112],
  planks: [0.26, 0.17, 0.1],
  felt: [0.055, 0.075, 0.06],
};

/** @param seed the same seed gives the same unevenness of its colour. */
export function tableTop(kind: TableKind, seed: number): TableTop {
  const noise = noiseField(seededRandom(seed), 311, 293, 1, [
    [3, 1],
    [14, 0.8],
    [60, 0.8],
  ]);
  return { kind, colour: colours[kind], noise, shadow: 0.55 };
}

/** Writes the table's linear reflectance at plane mm into `colour`. */
export function tableColour(table: TableTop, xMm: number, yMm: number, colour: number[]): void {
  let value: number;
  switch (table.kind) {
    case 'slate':
      value = 1 + 0.12 * noiseAt(table.noise, xMm, yMm);
      break;
    case 'planks': {
      const plank = Math.floor((xMm + 400) / 92);
      const seam = (xMm + 400) / 92 - plank;
      const grain = noiseAt(table.noise, xMm * 1.6 + plank * 37, yMm * 0.11 + plank * 71);
      value = (1 + 0.17 * grain + 0.06 * ((plank * 7) % 3)) * (seam < 0.012 ? 0.35 : 1);
      break;
    }
    case 'felt':
      value = 1 + 0.22 * noiseAt(table.noise, xMm * 3, yMm * 3);
      break;
    default:
      value = table.kind satisfies never;
  }
  for (let c = 0; c < 3; c++) colour[c] = Math.max(0.005, table.colour[c]! * value);
}
