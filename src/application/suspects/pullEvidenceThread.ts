import { readFile } from 'node:fs/promises';
import { workerData } from 'node:worker_threads';
import type { CoverageWithDoubt } from '../../imaging/evidence/evidenceGrid.ts';
import { pictureEvidence } from '../../imaging/evidence/pictureEvidence.ts';
import { readToneMap } from '../../imaging/maps/toneMapFile.ts';
import { type EvidenceRecord, evidenceSchema } from '../../records/evidence.ts';
import { engineVersion } from '../engineVersion.ts';
import { answer } from '../threads/answer.ts';
import type { PullEvidenceTask } from './pullEvidence.ts';

/** A kept map of darkness as coverage: over the darkness of a solid. */
async function coverage(path: string, solid: number): Promise<CoverageWithDoubt> {
  const map = readToneMap(await readFile(path));
  const over = (plane: Float32Array) => plane.map((value) => value / solid);
  return { ...map, data: over(map.data), deviation: over(map.deviation) };
}

async function evidence({ stone, pull, zones, measured }: PullEvidenceTask): Promise<EvidenceRecord> {
  return {
    schema: evidenceSchema,
    engine: engineVersion,
    ...pictureEvidence({
      drawn: await coverage(stone.map, stone.solid),
      printed: await coverage(pull.map, pull.solid),
      zones,
      measured,
      travel: null,
      rollerDiameterMm: null,
      strength: null,
    }),
  };
}

answer(await evidence(workerData as PullEvidenceTask));
