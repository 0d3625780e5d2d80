import { ok, type Result } from '../foundation/result.ts';
import type { ComparisonRecord } from '../records/comparison.ts';
import type { ComparisonRequest } from '../records/comparisonEntry.ts';
import type { Chip, Zone } from '../records/zone.ts';
import type { Corners, Point } from '../science/geometry/point.ts';
import type { Store } from '../store/openStore.ts';
import { type AddPhotographParts, addPhotograph } from './addPhotograph.ts';
import { resultKey } from './measuring/resultKey.ts';

export interface SampleSide {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly corners: Corners | null;
}

/** A pair that was measured beforehand, with all that its measuring left. */
export interface SampleComparison {
  readonly title: string;
  readonly sizeMm: Point;
  readonly stone: SampleSide;
  readonly proof: SampleSide;
  readonly zones: readonly Zone[];
  readonly chips: readonly Chip[];
  readonly record: ComparisonRecord;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

export interface PlaceSampleParts extends AddPhotographParts {
  readonly store: AddPhotographParts['store'] & Pick<Store, 'comparisons' | 'resultFiles'>;
  readonly newId: () => string;
  readonly findingOf: (record: ComparisonRecord) => string;
}

/**
 * Puts the invented studio's measured pair into a data folder that never had it, through the same doors as a
 * person's own. Once put by it stays away.
 *
 * @param load called only where the pair is missing
 * @returns why one of its photographs could not be taken in
 */
export async function placeSample(
  parts: PlaceSampleParts,
  load: () => Promise<SampleComparison>,
): Promise<Result<null>> {
  if (await parts.store.comparisons.hasSample()) return ok(null);
  const sample = await load();
  const stone = await addSide(parts, sample.stone);
  if (!stone.ok) return stone;
  const proof = await addSide(parts, sample.proof);
  if (!proof.ok) return proof;
  const { title, sizeMm, zones, chips, record } = sample;
  const request: ComparisonRequest = { title, sizeMm, stone: stone.value, proof: proof.value, zones, chips };
  const key = resultKey(request, record.engine);
  await parts.store.resultFiles.keep(key, record, sample.files);
  const at = parts.now().toISOString();
  await parts.store.comparisons.add({
    id: parts.newId(),
    title,
    createdAt: at,
    state: record.verdict === 'ok' ? 'measured' : 'refused',
    sample: true,
    request,
    finding: parts.findingOf(record),
    failure: null,
    resultKey: key,
    queuedAt: at,
    interruptions: 0,
  });
  return ok(null);
}

async function addSide(
  parts: PlaceSampleParts,
  side: SampleSide,
): Promise<Result<ComparisonRequest['stone']>> {
  const upload = { fileName: side.fileName, content: once(side.bytes) };
  const added = await addPhotograph(parts, upload);
  if (!added.ok) return added;
  return ok({ photograph: added.value.photograph.id, corners: side.corners, repeat: null, flat: null });
}

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}
