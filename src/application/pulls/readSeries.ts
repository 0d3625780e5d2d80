import { fail, ok, type Result } from '../../foundation/result.ts';
import type { WorkSeries } from '../../records/workSeries.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { unplacedTones } from '../../studio/proofs/toneAreas.ts';
import { workSeries } from '../../studio/proofs/workSeries.ts';
import { noSuchWork } from '../works/findWork.ts';
import { readingsOf } from './readingsOf.ts';
import { type RoomNoiseParts, readRoomNoise } from './readRoomNoise.ts';
import { settingsOf } from './seriesSettings.ts';

export interface ReadSeriesParts {
  readonly store: RoomNoiseParts['store'] & Pick<KeptRecords, 'works'>;
}

/** Whether the pulls of a work have settled; or `not-found`. */
export async function readSeries(parts: ReadSeriesParts, workId: string): Promise<Result<WorkSeries>> {
  const work = await parts.store.works.find(workId);
  if (work === null) return fail(noSuchWork());
  const { tolerance, areas } = await settingsOf(parts.store, work);
  const pulls = await parts.store.pulls.ofWork(workId);
  const noise = await readRoomNoise(parts);
  const tonesOf = await readingsOf(parts, pulls);
  return ok(workSeries({ workId, tolerance, noise, pulls, tonesOf, unplaced: unplacedTones(areas) }));
}
