import { readFile } from 'node:fs/promises';
import { workerData } from 'node:worker_threads';
import { claimedFraction } from '../../imaging/maps/changeMaps.ts';
import { differenceMaps } from '../../imaging/maps/differenceMaps.ts';
import { readToneMap } from '../../imaging/maps/toneMapFile.ts';
import { defaultParameters } from '../../records/comparison.ts';
import type { PullChange } from '../../records/pullTones.ts';
import { sheetMask } from '../comparison/sheetMask.ts';
import { answer } from '../threads/answer.ts';

/** Two kept maps of darkness, and by what they are compared. */
export interface DifferenceTask {
  readonly before: string;
  readonly after: string;
  readonly scale: { readonly before: number; readonly after: number };
  readonly within: number;
  /** σ of one reading, darkness. */
  readonly floor: number;
}

export interface DifferenceAnswer {
  readonly pictures: ReadonlyMap<string, Uint8Array>;
  readonly maps: NonNullable<PullChange['maps']>;
}

const names = { lighter: 'lighter.png', darker: 'darker.png' } as const;

async function difference({
  before,
  after,
  scale,
  within,
  floor,
}: DifferenceTask): Promise<DifferenceAnswer> {
  const [one, two] = [readToneMap(await readFile(before)), readToneMap(await readFile(after))];
  const { falseDiscoveryRate, smallestAreaMm2 } = defaultParameters;
  const found = differenceMaps(one, two, scale, { within, floor, falseDiscoveryRate, smallestAreaMm2 });
  const maps = {
    ...names,
    pxPerMm: one.pxPerMm,
    lighterFraction: claimedFraction(found.lighter, found.seenPx) ?? 0,
    darkerFraction: claimedFraction(found.darker, found.seenPx) ?? 0,
  };
  const pictures = new Map([
    [names.lighter, await sheetMask(found.lighter)],
    [names.darker, await sheetMask(found.darker)],
  ]);
  return { pictures, maps };
}

answer(await difference(workerData as DifferenceTask));
