import { type BlindSitting, type Hold, holds, type TestStoneReading } from '../../../records/patchReading.ts';
import {
  type KappaAnswer,
  squaredWeights,
  weightedKappa,
} from '../../../science/statistics/weightedKappa.ts';

/** How well two readings of one print agree. */
export interface ReaderAgreement {
  readonly first: string;
  readonly second: string;
  /** Patches that both told. */
  readonly patches: number;
  readonly alike: number;
  /** Weighted by the square of the steps between; null where chance alone would agree on everything. */
  readonly kappa: KappaAnswer | null;
}

type Reading = { readonly reader: string; readonly print: string; readonly told: ReadonlyMap<string, Hold> };

/**
 * Every pair of readings of one print: eye against camera, eye against eye. The camera's is its own, before corrections.
 * Readings that share no patch are left out.
 */
export function readerAgreements(
  sittings: readonly BlindSitting[],
  reading: TestStoneReading,
): ReaderAgreement[] {
  const readings = [...cameraReadings(reading), ...sittings.map(eyeReading)];
  return readings.flatMap((first, index) =>
    readings.slice(index + 1).flatMap((second) => {
      if (first.print !== second.print) return [];
      const counts = holds.map(() => holds.map(() => 0));
      let [patches, alike] = [0, 0];
      for (const [patch, hold] of first.told) {
        const other = second.told.get(patch);
        if (other === undefined) continue;
        counts[holds.indexOf(hold)]![holds.indexOf(other)]!++;
        patches++;
        if (hold === other) alike++;
      }
      if (patches === 0) return [];
      const kappa = weightedKappa(counts, squaredWeights(holds.length));
      return [{ first: first.reader, second: second.reader, patches, alike, kappa }];
    }),
  );
}

function cameraReadings({ prints }: TestStoneReading): Reading[] {
  return prints
    .filter(({ patches }) => patches.length > 0)
    .map(({ print, patches }) => ({
      reader: 'the camera',
      print,
      told: new Map(
        patches.flatMap(({ patch, camera }) => (camera.hold === null ? [] : [[patch, camera.hold] as const])),
      ),
    }));
}

function eyeReading({ reader, print, answers }: BlindSitting): Reading {
  const told = new Map<string, Hold>();
  for (const { patch, hold } of answers) {
    if (hold === null) told.delete(patch);
    else told.set(patch, hold);
  }
  return { reader, print, told };
}
