import { createHash, randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ComparisonRecord, ZoneResult } from '../../records/comparison.ts';
import { type EvidenceRecord, evidenceSchema } from '../../records/evidence.ts';
import type { PullTones } from '../../records/pullTones.ts';
import { pictureFeatures } from '../../records/suspects.ts';
import type { Zone } from '../../records/zone.ts';
import { moveDurably, writeSynced } from '../../store/files/durableFiles.ts';
import type { Store } from '../../store/openStore.ts';
import { toneMapName } from '../pulls/measurePull.ts';
import { answerInThread } from '../threads/answerInThread.ts';
import { threadModule } from '../threads/runInThread.ts';

/** What was read of a stone or a pull, and under which key its map is kept. */
export interface KeptTones {
  readonly tones: PullTones;
  readonly key: string;
}

interface ScaledMap {
  readonly map: string;
  /** Darkness of the solid. */
  readonly solid: number;
}

/** What the thread is given. */
export interface PullEvidenceTask {
  readonly stone: ScaledMap;
  readonly pull: ScaledMap;
  readonly zones: readonly Zone[];
  readonly measured: Pick<ComparisonRecord, 'zones' | 'warnings' | 'strength'>;
}

/**
 * What a pull's map shows of faults beside the drawn stone's: worked out once in a thread and kept in the cache.
 * @param reference darkness of the series' solid; null: the pull's own.
 * @returns null where one of the two has no solid or left no map.
 */
export async function pullEvidence(
  store: Pick<Store, 'pullFiles' | 'folder'>,
  stone: KeptTones,
  pull: KeptTones,
  zones: readonly Zone[],
  reference: number | null,
): Promise<EvidenceRecord | null> {
  const solids = { stone: stone.tones.solid?.darkness, pull: reference ?? pull.tones.solid?.darkness };
  const [stoneMap, pullMap] = await Promise.all(
    [stone, pull].map(({ key }) => store.pullFiles.pathOf(key, toneMapName)),
  );
  if (!solids.stone || !solids.pull || !stoneMap || !pullMap) return null;
  const task: PullEvidenceTask = {
    stone: { map: stoneMap, solid: solids.stone },
    pull: { map: pullMap, solid: solids.pull },
    zones,
    measured: {
      zones: zoneResults(stone, pull, { stone: solids.stone, pull: solids.pull }),
      warnings: pull.tones.warnings,
      strength: { stone: stone.tones.strength, proof: pull.tones.strength },
    },
  };
  const name = createHash('sha256')
    .update(JSON.stringify([evidenceSchema, pictureFeatures, stone.key, pull.key, solids, zones]))
    .digest('hex');
  const file = join(store.folder.cache, 'evidence', `${name}.json`);
  const kept = await readFile(file, 'utf8').catch(() => null);
  if (kept !== null) return JSON.parse(kept) as EvidenceRecord;
  const record = await answerInThread<EvidenceRecord>(
    threadModule(import.meta.url, 'pullEvidenceThread'),
    task,
  );
  const working = join(store.folder.incoming, randomUUID());
  await writeSynced(working, Buffer.from(JSON.stringify(record)));
  await moveDurably(working, file);
  return record;
}

const noParts = { noise: 0, ground: 0, solid: 0, response: 0, registration: 0, floor: 0 } as const;

/** Zones as a comparison has them: coverage is darkness over the solid's. */
function zoneResults(
  stone: KeptTones,
  pull: KeptTones,
  solids: { readonly stone: number; readonly pull: number },
): ZoneResult[] {
  return pull.tones.zones.map(({ id, name, medium, darkness, covered }) => {
    const drawn = stone.tones.zones.find((one) => one.id === id)?.darkness ?? null;
    const over = (read: typeof darkness, solid: number) =>
      read && {
        coverage: read.value / solid,
        low: read.low / solid,
        high: read.high / solid,
        parts: noParts,
      };
    return {
      id,
      name,
      medium,
      drawn: over(drawn, solids.stone),
      printed: over(darkness, solids.pull),
      drawnDarkness: drawn?.value ?? null,
      printedDarkness: darkness?.value ?? null,
      change: 'undecided',
      covered,
      areaMm2: 0,
    };
  });
}
