import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { ComparisonRequest } from '../../records/comparisonEntry.ts';
import type { TestPrint, TestStone } from '../../records/testStone.ts';
import type { Store } from '../../store/openStore.ts';
import { type CreateComparisonParts, createComparison } from '../createComparison.ts';
import { noSuchTestStone } from './noSuchTestStone.ts';
import { patchZones } from './patchZones.ts';

export interface MeasurePrintsParts extends CreateComparisonParts {
  readonly store: CreateComparisonParts['store'] & Pick<Store, 'testStones' | 'decide'>;
}

/**
 * Has every print of a test stone compared with it, patches as zones; those that were read as they stand now stay.
 * @returns the test stone with its prints' comparisons; `not-found`, `patches-none`, `test-photograph-missing`, or a
 * fault of `validateRequest`
 */
export async function measureTestPrints(parts: MeasurePrintsParts, id: string): Promise<Result<TestStone>> {
  const stone = await parts.store.testStones.find(id);
  if (stone === null) return fail(noSuchTestStone());
  const { name, patches, drawn, prints } = stone;
  if (patches.length === 0) return fail(failure('patches-none', { name }, 'patches'));
  if (drawn === null)
    return fail(failure('test-photograph-missing', { name, what: 'the drawn stone' }, 'drawn'));
  if (prints.length === 0)
    return fail(failure('test-photograph-missing', { name, what: 'a print' }, 'prints'));
  const asked = new Map<string, string>();
  for (const print of prints) {
    const request = printRequest(stone, print);
    if (await standsAlready(parts, print, request)) continue;
    const created = await createComparison(parts, request);
    if (!created.ok) return created;
    asked.set(print.id, created.value.id);
  }
  return keepComparisons(parts, id, asked);
}

/** What is asked of the comparison that reads one print. */
export function printRequest(stone: TestStone, print: TestPrint): ComparisonRequest {
  const side = ({ photograph, corners, repeat, flat }: TestPrint | NonNullable<TestStone['drawn']>) => ({
    photograph,
    corners,
    repeat,
    flat,
  });
  return {
    title: `${stone.name}: ${print.name}`.slice(0, 200),
    sizeMm: stone.sizeMm,
    stone: side(stone.drawn!),
    proof: side(print),
    zones: patchZones(stone.patches, stone.factors),
    chips: [],
    cornersInOrder: print.corners !== null,
    only: 'patches',
  };
}

/** Whether two requests ask for the same measurement, whatever their titles. */
export function sameReading(a: ComparisonRequest, b: ComparisonRequest): boolean {
  const measured = ({ sizeMm, stone, proof, zones, chips }: ComparisonRequest) =>
    JSON.stringify([
      sizeMm,
      [stone.photograph, stone.corners, stone.repeat, stone.flat],
      [proof.photograph, proof.corners, proof.repeat, proof.flat],
      zones.map(({ id, medium, intention, polygonMm }) => [id, medium, intention, polygonMm]),
      chips,
    ]);
  return measured(a) === measured(b);
}

async function standsAlready(
  { store }: MeasurePrintsParts,
  { comparisonId }: TestPrint,
  request: ComparisonRequest,
): Promise<boolean> {
  const kept = comparisonId === null ? null : await store.comparisons.find(comparisonId);
  if (kept === null || kept.state === 'not-done' || kept.state === 'stopped') return false;
  return sameReading(kept.request, request);
}

function keepComparisons(
  { store, now }: MeasurePrintsParts,
  id: string,
  asked: ReadonlyMap<string, string>,
): Promise<Result<TestStone>> {
  return store.decide<TestStone, never>(async (records) => {
    // read again: somebody may have saved meanwhile, and nothing of theirs is lost
    const kept = (await records.testStones.find(id))!;
    if (asked.size === 0) return ok(kept);
    const prints = kept.prints.map((print) => ({
      ...print,
      comparisonId: asked.get(print.id) ?? print.comparisonId,
    }));
    const next = { ...kept, prints, version: kept.version + 1, changedAt: now().toISOString() };
    await records.testStones.save(next, kept.version);
    return ok(next);
  });
}
