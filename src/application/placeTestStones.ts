import { fail, ok, type Result } from '../foundation/result.ts';
import type { ComparisonRecord } from '../records/comparison.ts';
import type { TestPrint, TestStoneDraft } from '../records/testStone.ts';
import type { Corners } from '../science/geometry/point.ts';
import { addPhotograph } from './addPhotograph.ts';
import { engineVersion } from './engineVersion.ts';
import { resultKey } from './measuring/resultKey.ts';
import type { Services } from './openServices.ts';
import { measureTestPrints, printRequest } from './testStones/measureTestPrints.ts';
import { createTestStone } from './testStones/testStones.ts';

/** A test stone of the invented studio with its photographs and what was measured of them; `measured` null: it is measured here. */
export interface SampleTestStone {
  readonly draft: TestStoneDraft;
  readonly stone: { readonly fileName: string; readonly bytes: Uint8Array; readonly corners: Corners };
  readonly print: { readonly fileName: string; readonly bytes: Uint8Array; readonly corners: Corners };
  readonly printName: string;
  readonly measured: {
    readonly record: ComparisonRecord;
    readonly files: ReadonlyMap<string, Uint8Array>;
  } | null;
}

/** Test stones that are read only where they are missing. */
export interface SampleTestStonesToPlace {
  /** The test stone that they follow: where it is gone or put by, they stay away. */
  readonly afterId: string;
  /** The one with photographs, and the one that is planned. */
  readonly readId: string;
  readonly plannedId: string;
  readonly load: () => Promise<{ readonly read: SampleTestStone; readonly planned: TestStoneDraft }>;
}

/**
 * Puts a read test stone of the invented studio, and a planned one, beside its first one; what is there already stays as it is. A
 * reading by another engine is left out: the photographs are then measured here.
 *
 * @returns why one of them could not be kept
 */
export async function placeTestStones(
  parts: Services,
  { afterId, readId, plannedId, load }: SampleTestStonesToPlace,
): Promise<Result<null>> {
  const { store } = parts;
  const before = await store.testStones.find(afterId);
  if (before === null || !before.sample || before.putBy) return ok(null);
  const missing = async (id: string) => (await store.testStones.find(id)) === null;
  if (!(await missing(readId)) && !(await missing(plannedId))) return ok(null);
  const { read, planned } = await load();
  if (await missing(readId)) {
    const placed = await placeRead(parts, readId, read);
    if (!placed.ok) return placed;
  }
  if (await missing(plannedId)) {
    const made = await createTestStone({ ...parts, sample: true, newId: () => plannedId }, planned);
    if (!made.ok) return fail(made.error.failure);
  }
  return ok(null);
}

async function placeRead(
  parts: Services,
  id: string,
  { draft, stone, print, printName, measured }: SampleTestStone,
): Promise<Result<null>> {
  const added: string[] = [];
  for (const { fileName, bytes } of [stone, print]) {
    const kept = await addPhotograph(parts, { fileName, content: once(bytes) });
    if (!kept.ok) return kept;
    added.push(kept.value.photograph.id);
  }
  const shown = { repeat: null, flat: null };
  const drawn = { ...shown, photograph: added[0]!, corners: stone.corners };
  const proof: TestPrint = {
    ...shown,
    id: 'proof',
    name: printName,
    photograph: added[1]!,
    corners: print.corners,
    comparisonId: null,
  };
  const sampleParts = { ...parts, sample: true, newId: () => id };
  const made = await createTestStone(sampleParts, { ...draft, drawn, prints: [proof] });
  if (!made.ok) return fail(made.error.failure);
  if (measured?.record.engine === engineVersion) {
    const key = resultKey(printRequest(made.value, proof), engineVersion);
    await parts.store.resultFiles.keep(key, measured.record, measured.files);
  }
  const asked = await measureTestPrints(parts, id);
  return asked.ok ? ok(null) : asked;
}

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}
