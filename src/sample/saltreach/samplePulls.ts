import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { KeptReading, SamplePulls, SamplePullsToPlace } from '../../application/placePulls.ts';
import { toneMapName } from '../../application/pulls/measurePull.ts';
import type { PullTones } from '../../records/pullTones.ts';
import type { Chip } from '../../records/zone.ts';
import type { Corners } from '../../science/geometry/point.ts';
import { keptFolder } from './keptFolder.ts';
import { lowWaterAreas, lowWaterPulls, photographedAfterMinutes } from './lowWaterPulls.ts';
import { sampleMeasureInput } from './sampleComparison.ts';

/** The work that the pulls were made from. */
export const pulledWorkId = 'saltreach-low-water';

/** One rendered photograph of a pull, as pulls.json lists it. */
export interface KeptPullPhotograph {
  readonly pull: number;
  readonly fileName: string;
  readonly corners: Corners;
  readonly chips: readonly Omit<Chip, 'photo'>[];
}

/** Where the pulls' photographs and what was read from them lie. */
export const pullFolder = (): string => join(keptFolder(), 'pulls');

/** Names of the two files that a photograph's reading is kept in. */
export function readingNames(fileName: string): { readonly record: string; readonly map: string } {
  const name = fileName.replace(/\.jpg$/, '');
  return { record: `${name}.json`, map: `${name}.map` };
}

/** For a data folder that may have them already. */
export const samplePulls: SamplePullsToPlace = {
  workId: pulledWorkId,
  lastId: lowWaterPulls.at(-1)!.id,
  load: loadSamplePulls,
};

/** The pulls with all that their measuring left, as kept. Throws where the package's own files are missing. */
export async function loadSamplePulls(): Promise<SamplePulls> {
  const listed = JSON.parse(await readFile(join(pullFolder(), 'pulls.json'), 'utf8')) as KeptPullPhotograph[];
  const { stone } = await sampleMeasureInput();
  const { bytes, fileName, corners } = stone;
  const pulls = lowWaterPulls.map(async ({ id, draft }) => ({
    id,
    draft,
    photographs: await Promise.all(
      listed
        .filter(({ pull }) => pull === draft.number)
        .map(async (shown) => ({
          fileName: shown.fileName,
          bytes: await readFile(join(pullFolder(), shown.fileName)),
          reading: await keptReading(shown.fileName),
          takenAt: null,
          ageMinutes: photographedAfterMinutes,
          corners: shown.corners,
          chips: shown.chips,
        })),
    ),
  }));
  return {
    workId: pulledWorkId,
    stone: { fileName, bytes, corners: corners!, reading: await keptReading(fileName) },
    areas: lowWaterAreas,
    pulls: await Promise.all(pulls),
  };
}

/** null where it was not measured yet: while the readings themselves are made. */
async function keptReading(fileName: string): Promise<KeptReading | null> {
  const names = readingNames(fileName);
  const record = join(pullFolder(), names.record);
  if (!existsSync(record)) return null;
  const map = join(pullFolder(), names.map);
  const files = existsSync(map)
    ? new Map([[toneMapName, await readFile(map)]])
    : new Map<string, Uint8Array>();
  return { record: JSON.parse(await readFile(record, 'utf8')) as PullTones, files };
}
