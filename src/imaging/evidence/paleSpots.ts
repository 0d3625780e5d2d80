import type { FeatureReading } from '../../records/suspects.ts';
import { median, quantile } from '../../science/statistics/quantile.ts';
import { connectedPlaces } from '../operations/connectedPlaces.ts';
import type { PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

/** In lighter work the grain makes spots of its own. */
const spotTones = 0.35;
const palerBy = 0.22;
const mostCells = 5;

/** How many small pale spots (2–5 mm) there are in middle and dark work, whose surroundings print as they should. */
export function paleSpots({ grid, left }: PulledTone): FeatureReading | null {
  const { columns, rows } = grid;
  let looked = 0;
  const mask = new Uint8Array(left.length);
  for (let cell = 0; cell < left.length; cell++) {
    if (!(grid.drawn[cell]! >= spotTones) || Number.isNaN(left[cell]!)) continue;
    looked++;
    const [x, y] = [cell % columns, Math.floor(cell / columns)];
    const ring: number[] = [];
    let highest = -Infinity;
    for (let dy = -4; dy <= 4; dy++)
      for (let dx = -4; dx <= 4; dx++) {
        const far = Math.max(Math.abs(dx), Math.abs(dy)) >= 3;
        if (!far || x + dx < 0 || x + dx >= columns || y + dy < 0 || y + dy >= rows) continue;
        const around = left[cell + dy * columns + dx]!;
        ring.push(around);
        if (around > highest) highest = around;
      }
    if (left[cell]! >= highest - palerBy) continue;
    // In a pale place or beside one it is no spot of its own.
    const around = quantile(ring, 0.25);
    if (around > -0.12 && quantile(ring, 0.9) - around < 0.3 && left[cell]! < median(ring) - palerBy)
      mask[cell] = 1;
  }
  if (looked < 100) return null;
  const spots = connectedPlaces(mask, columns, rows).filter(
    ({ pixels }) => pixels.length <= mostCells,
  ).length;
  return reading(spots, Math.sqrt(spots) * 0.5 + 0.7);
}
