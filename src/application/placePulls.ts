import { fail, ok, type Result } from '../foundation/result.ts';
import type { PullDraft, PullPhotograph } from '../records/pull.ts';
import type { PullTones } from '../records/pullTones.ts';
import type { Work } from '../records/work.ts';
import type { SeriesSettings } from '../records/workSeries.ts';
import type { Corners } from '../science/geometry/point.ts';
import type { Store } from '../store/openStore.ts';
import { type AddPhotographParts, addPhotograph } from './addPhotograph.ts';
import { engineVersion } from './engineVersion.ts';
import { createPull, type PullSavingParts } from './pulls/createPull.ts';
import { printJob, stoneJob } from './pulls/pullJob.ts';
import { changeSeriesSettings, settingsOf } from './pulls/seriesSettings.ts';
import { changeWork } from './works/changeWork.ts';

/** What an earlier measuring left of one photograph. */
export interface KeptReading {
  readonly record: PullTones;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/** A photograph as it is kept with the program; `reading` null: it is measured after it was placed. */
export interface SamplePhotograph {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly reading: KeptReading | null;
}

/** Pulls of one of the invented studio's works, photographed and measured beforehand. */
export interface SamplePulls {
  readonly workId: string;
  readonly stone: SamplePhotograph & { readonly corners: Corners };
  readonly areas: SeriesSettings['areas'];
  readonly pulls: readonly {
    readonly id: string;
    readonly draft: Omit<PullDraft, 'photographs'>;
    readonly photographs: readonly (SamplePhotograph & Omit<PullPhotograph, 'photograph'>)[];
  }[];
}

/** Pulls that are read only where they are missing. */
export interface SamplePullsToPlace {
  readonly workId: string;
  /** The last of them: where it is there, all are. */
  readonly lastId: string;
  readonly load: () => Promise<SamplePulls>;
}

type PlacePullsParts = AddPhotographParts & PullSavingParts & { readonly store: Store };

/**
 * Puts the invented studio's pulls beside its work, with what was read from them, as long as that work holds none of
 * anybody's own and no other photograph; what a broken start left out is put in at the next. A reading by another engine is left out: its photograph is then measured here.
 *
 * @returns why one of them could not be kept
 */
export async function placePulls(
  parts: PlacePullsParts,
  { workId, lastId, load }: SamplePullsToPlace,
): Promise<Result<null>> {
  const { store } = parts;
  const work = await store.works.find(workId);
  if (work === null || !work.sample || work.putBy) return ok(null);
  if ((await store.pulls.find(lastId)) !== null) return ok(null);
  if ((await store.pulls.ofWork(workId)).some((pull) => !pull.sample)) return ok(null);
  const sample = await load();
  const added = new Map<string, string>();
  for (const shown of [sample.stone, ...sample.pulls.flatMap(({ photographs }) => photographs)]) {
    const { fileName, bytes } = shown;
    const kept = await addPhotograph(parts, { fileName, content: once(bytes) });
    if (!kept.ok) return kept;
    added.set(fileName, kept.value.photograph.id);
  }
  const stone = added.get(sample.stone.fileName)!;
  if (work.photographs.some(({ photograph }) => photograph !== stone)) return ok(null);
  const ready = await withStone(parts, work, sample, stone);
  if (!ready.ok) return ready;
  for (const { id, draft, photographs } of sample.pulls) {
    if ((await store.pulls.find(id)) !== null) continue;
    const shown: PullPhotograph[] = [];
    for (const { fileName, bytes: _, reading, ...of } of photographs) {
      const photograph = { ...of, photograph: added.get(fileName)! };
      shown.push(photograph);
      await keepReading(
        store,
        await printJob(parts, ready.value.work, ready.value.settings, photograph),
        reading,
      );
    }
    const sampleParts = { ...parts, sample: true, newId: () => id };
    const created = await createPull(sampleParts, workId, { ...draft, photographs: shown });
    if (!created.ok) return fail(created.error.failure);
  }
  return ok(null);
}

type Ready = Result<{ readonly work: Work; readonly settings: SeriesSettings }>;

/** Attaches the drawn stone's photograph and settles where tones are read. */
async function withStone(
  parts: PlacePullsParts,
  work: Work,
  { stone, areas }: SamplePulls,
  photograph: string,
): Promise<Ready> {
  const attached = {
    photograph,
    state: 'drawn' as const,
    takenAt: null,
    corners: { of: 'rectangle' as const, px: stone.corners },
    note: '',
  };
  const { store } = parts;
  if (work.photographs.length === 0) {
    const changed = await changeWork(parts, work.id, { version: work.version, photographs: [attached] });
    if (!changed.ok) return fail(changed.error.failure);
  }
  const { version } = await settingsOf(store, work);
  if (version === 0) {
    const settled = await changeSeriesSettings(parts, work.id, { version, areas });
    if (!settled.ok) return fail(settled.error.failure);
  }
  const now = (await store.works.find(work.id))!;
  const settings = await settingsOf(store, now);
  await keepReading(store, await stoneJob(parts, now, settings, 'drawn'), stone.reading);
  return ok({ work: now, settings });
}

/** Keeps a reading that came with the program, if this engine made it. */
export async function keepReading(
  store: Store,
  keyed: Awaited<ReturnType<typeof printJob>>,
  reading: KeptReading | null,
): Promise<void> {
  if (!keyed.ok || reading === null || reading.record.engine !== engineVersion) return;
  await store.pullFiles.keep(keyed.value.key, reading.record, reading.files);
}

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}
