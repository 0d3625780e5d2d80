import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { seriesTones } from '../../records/proofSeries.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { Work } from '../../records/work.ts';
import type { KeptSeriesSettings, SeriesSettings } from '../../records/workSeries.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { toneAreas } from '../../studio/proofs/toneAreas.ts';
import { type Changes, refused, type Saved, type SavingParts, stale, withChanges } from '../saving.ts';
import { noSuchWork } from '../works/findWork.ts';
import { judgeStoneZones } from '../works/judgeStoneZones.ts';

/** What the artist accepts until told otherwise: our rule. */
export const startingTolerance = 0.04;

/** What is settled for a work's series; what isn't yet is worked out from its zones. */
export async function settingsOf(
  records: Pick<KeptRecords, 'series'>,
  work: Work,
): Promise<KeptSeriesSettings> {
  const kept = await records.series.settings(work.id);
  if (kept) return kept;
  return {
    workId: work.id,
    version: 0,
    changedAt: null,
    tolerance: startingTolerance,
    areas: toneAreas(work),
    reference: null,
    best: null,
  };
}

/** The settings of a work's series; or `not-found`. */
export async function readSeriesSettings(
  { store }: { readonly store: Pick<KeptRecords, 'works' | 'series'> },
  workId: string,
): Promise<Result<KeptSeriesSettings>> {
  const work = await store.works.find(workId);
  return work === null ? fail(noSuchWork()) : ok(await settingsOf(store, work));
}

/**
 * Saves tolerance, areas, reference or best pull. Where the areas changed, every pull waits to be read again, so that all
 * are read alike.
 * @returns `stale-save` with the settings as they are now, the faults of an outline, or `reference-unknown` for a best pull that is not there
 */
export async function changeSeriesSettings(
  parts: Pick<SavingParts, 'store' | 'now'> & { readonly pullQueue: { wake(): void } },
  workId: string,
  { version, ...changes }: Changes<SeriesSettings>,
): Promise<Saved<KeptSeriesSettings>> {
  const saved = await parts.store.decide<KeptSeriesSettings, SaveRefusal<KeptSeriesSettings>>(
    async (records) => {
      const work = await records.works.find(workId);
      if (work === null) return refused(noSuchWork());
      const kept = await settingsOf(records, work);
      if (kept.version !== version) {
        const versions = { yours: version, kept: kept.version };
        return stale(`the settings of ${work.title}`, versions, kept);
      }
      const at = parts.now().toISOString();
      const next = {
        ...withChanges<KeptSeriesSettings>(kept, changes),
        version: version + 1,
        changedAt: at,
      };
      const stone = (await records.stones.find(work.stoneId))!;
      const fault = judgeAreas(next, stone) ?? (await judgeBest(records, next));
      if (fault) return refused(fault);
      await records.series.saveSettings(next, version);
      if (JSON.stringify(kept.areas) !== JSON.stringify(next.areas)) {
        const impressions = await records.pulls.impressionsOf({ work: workId });
        for (const { id } of [...(await records.pulls.ofWork(workId)), ...impressions])
          await records.pullMeasurings.queueAgain(id, at);
      }
      return ok(next);
    },
  );
  if (saved.ok) parts.pullQueue.wake();
  return saved;
}

function judgeAreas({ areas }: SeriesSettings, stone: KeptStone): Failure | null {
  for (const tone of seriesTones) {
    const outlines = areas[tone].polygonsMm.map((polygonMm, index) => ({
      id: `${tone} ${index + 1}`,
      polygonMm,
    }));
    const fault = judgeStoneZones(outlines, stone);
    if (fault) return { ...fault, path: `areas.${tone}.${fault.path!.replace('zones', 'polygonsMm')}` };
  }
  return null;
}

async function judgeBest(
  records: Pick<KeptRecords, 'pulls'>,
  { workId, best }: KeptSeriesSettings,
): Promise<Failure | null> {
  if (best === null || (await records.pulls.numbered(workId, best)) !== null) return null;
  return failure('reference-unknown', { what: 'pull of this work', id: best }, 'best');
}
