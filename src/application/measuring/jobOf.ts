import type { ComparisonRequest, ComparisonSide } from '../../records/comparisonEntry.ts';
import type { Store } from '../../store/openStore.ts';
import { partsPlaceIn } from '../testStones/reading/keptParts.ts';
import type { JobPhotograph, JobSide, MeasuringJob } from './measuringJob.ts';

type Photographs = Pick<Store, 'photographs' | 'photographFiles'>;

async function jobPhotograph(store: Photographs, id: string): Promise<JobPhotograph> {
  const photograph = await store.photographs.find(id);
  // the database's foreign keys hold every photograph that a comparison names
  if (photograph === null) throw new Error(`no photograph ${id}`);
  return { file: store.photographFiles.pathOf(id, photograph.kind), fileName: photograph.fileName };
}

async function jobSide(store: Photographs, side: ComparisonSide): Promise<JobSide> {
  return {
    ...(await jobPhotograph(store, side.photograph)),
    corners: side.corners,
    repeat: side.repeat === null ? null : await jobPhotograph(store, side.repeat),
    flat: side.flat === null ? null : await jobPhotograph(store, side.flat),
  };
}

/** What the measuring thread is given for a request: its photographs by their place on the disk. */
export async function jobOf(
  store: Photographs & Pick<Store, 'folder'>,
  request: ComparisonRequest,
): Promise<Omit<MeasuringJob, 'stopFlag'>> {
  return {
    stone: await jobSide(store, request.stone),
    proof: await jobSide(store, request.proof),
    sizeMm: request.sizeMm,
    zones: request.zones,
    chips: request.chips,
    ...(request.cornersInOrder && { cornersInOrder: true }),
    ...(request.only === 'patches' && { patches: partsPlaceIn(store.folder) }),
  };
}
