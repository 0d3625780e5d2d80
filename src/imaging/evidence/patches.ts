import type { FeatureReading } from '../../records/suspects.ts';
import { connectedPlaces } from '../operations/connectedPlaces.ts';
import { cellMm } from './evidenceGrid.ts';
import { mean } from './means.ts';
import type { PulledTone } from './pulledTone.ts';
import { reading } from './reading.ts';

/** Smaller places are spots or chance. */
const leastPatchMm2 = 24;
const lightUpTo = 0.28;
const darkFrom = 0.4;
const fewestCells = 40;

/** Places on a print where work is missing, by how it is missing. */
export interface FoundPatches {
  readonly lightsLostInPatches: FeatureReading | null;
  readonly wholeTonesGone: FeatureReading | null;
  readonly paleSoftPatch: FeatureReading | null;
  /** 1 where a patch of any kind lies, and around it. */
  readonly cells: Uint8Array;
}

/**
 * Patches that are missing. `lightsLostInPatches`: share of the light work that is gone in patches; `wholeTonesGone`: share of the
 * middle and dark work that is gone in patches; `paleSoftPatch`: share of it that is paler in patches without being gone.
 */
export function patches({ grid, left, expected }: PulledTone): FoundPatches {
  const light = Uint8Array.from(expected.cells, (_, i) =>
    grid.drawn[i]! <= lightUpTo && !Number.isNaN(left[i]!) ? 1 : 0,
  );
  const dark = Uint8Array.from(expected.cells, (_, i) =>
    grid.drawn[i]! >= darkFrom && !Number.isNaN(left[i]!) ? 1 : 0,
  );
  const any = new Uint8Array(left.length);
  const found = (of: Uint8Array, from: number, to: number, leastMm2 = leastPatchMm2) => {
    const mask = of.map((is, i) => (is && left[i]! >= from && left[i]! < to ? 1 : 0));
    const places = connectedPlaces(mask, grid.columns, grid.rows).filter(
      ({ pixels }) => pixels.length * cellMm * cellMm >= leastMm2 && isCompact(pixels, grid.columns),
    );
    for (const { pixels } of places) for (const i of pixels) any[i] = 1;
    const cells = places.flatMap(({ pixels }) => pixels);
    const all = of.reduce((sum: number, is) => sum + is, 0);
    const largest = places.reduce<readonly number[]>(
      (most, { pixels }) => (pixels.length > most.length ? pixels : most),
      [],
    );
    return {
      share: cells.length / all,
      together: togetherShare(cells, largest, grid.columns),
      count: all,
      where: largest.length > 0 ? placeWords(largest, grid.columns) : null,
    };
  };
  const told = ({ share, count, where }: Omit<ReturnType<typeof found>, 'together'>) =>
    count < fewestCells ? null : reading(share, 0.3 * share + 0.01, where);
  const lightLost = found(light, -2, -0.45);
  const gone = found(dark, -2, -0.5);
  const pale = found(dark, -0.5, -0.09, 60);
  return {
    lightsLostInPatches: told(lightLost),
    wholeTonesGone: told(gone),
    paleSoftPatch: told({ ...pale, share: pale.share * pale.together ** 2 }),
    cells: grown(any, grid.columns),
  };
}

function grown(mask: Uint8Array, columns: number): Uint8Array {
  const out = new Uint8Array(mask.length);
  for (let cell = 0; cell < mask.length; cell++)
    if (mask[cell])
      for (let dy = -2; dy <= 2; dy++) for (let dx = -2; dx <= 2; dx++) out[cell + dy * columns + dx] = 1;
  return out;
}

/** Long and thin places belong to lines, not patches. */
function isCompact(cells: readonly number[], columns: number): boolean {
  const extent = (of: (cell: number) => number) =>
    Math.max(...cells.map(of)) - Math.min(...cells.map(of)) + 1;
  const [wide, high] = [extent((cell) => cell % columns), extent((cell) => Math.floor(cell / columns))];
  return Math.max(wide, high) / Math.min(wide, high) < 3.2;
}

const nearMm = 24;

/** Share of cells that lie around the largest place: 1 where all of it is one fault. */
function togetherShare(cells: readonly number[], largest: readonly number[], columns: number): number {
  if (cells.length === 0) return 0;
  const x = mean(largest.map((cell) => cell % columns));
  const y = mean(largest.map((cell) => Math.floor(cell / columns)));
  const near = cells.filter(
    (cell) => Math.hypot((cell % columns) - x, Math.floor(cell / columns) - y) * cellMm < nearMm,
  );
  return near.length / cells.length;
}

function placeWords(cells: readonly number[], columns: number): string {
  const x = mean(cells.map((cell) => (cell % columns) + 0.5)) * cellMm;
  const y = mean(cells.map((cell) => Math.floor(cell / columns) + 0.5)) * cellMm;
  return `largest about ${Math.round(x)} mm from the left and ${Math.round(y)} mm from the start of the travel`;
}
