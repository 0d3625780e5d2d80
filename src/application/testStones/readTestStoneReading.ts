import { fail, ok, type Result } from '../../foundation/result.ts';
import type { ComparisonRecord } from '../../records/comparison.ts';
import type {
  HoldCorrection,
  PrintReading,
  TestStoneCaution,
  TestStoneReading,
} from '../../records/patchReading.ts';
import type { TestPrint, TestStone } from '../../records/testStone.ts';
import type { Store } from '../../store/openStore.ts';
import { correctionsIn } from '../../studio/trials/reading/foldTestStoneEvents.ts';
import { holdRule } from '../../studio/trials/reading/readHold.ts';
import { readPatches } from '../../studio/trials/reading/readPatches.ts';
import { findingCautions, layoutCautions } from '../../studio/trials/reading/testStoneCautions.ts';
import type { MeasuringQueue } from '../measuring/measuringQueue.ts';
import { printRequest, sameReading } from './measureTestPrints.ts';
import { noSuchTestStone } from './noSuchTestStone.ts';

export interface ReadingParts {
  /** Tells how far a running reading has come; left out: nobody asks. */
  readonly queue?: Pick<MeasuringQueue, 'progressOf'>;
  readonly store: Pick<Store, 'testStones' | 'comparisons' | 'resultFiles'>;
}

interface ReadPrint {
  readonly reading: PrintReading;
  readonly cautions: readonly TestStoneCaution[];
}

/** All that was read of a test stone, worked out from what is kept; or `not-found`. */
export async function readTestStoneReading(
  parts: ReadingParts,
  id: string,
): Promise<Result<TestStoneReading>> {
  const stone = await parts.store.testStones.find(id);
  if (stone === null) return fail(noSuchTestStone());
  const prints = await readAll(parts, stone);
  const judged = judgedPrint(stone, prints);
  return ok({
    schema: 'stonetone/test-stone-reading/1',
    testStone: id,
    version: stone.version,
    rule: holdRule,
    prints: prints.map(({ reading }) => reading),
    judgedBy: judged?.reading.print ?? null,
    findings: judged?.reading.patches ?? [],
    cautions: [...layoutCautions(stone), ...(judged?.cautions ?? [])],
  });
}

/** Every print of a test stone as it was read, in their order. */
export async function readPrints(parts: ReadingParts, stone: TestStone): Promise<readonly PrintReading[]> {
  return (await readAll(parts, stone)).map(({ reading }) => reading);
}

async function readAll(parts: ReadingParts, stone: TestStone): Promise<ReadPrint[]> {
  const corrections = correctionsIn(await parts.store.testStones.events(stone.id));
  const prints: ReadPrint[] = [];
  for (const print of stone.prints) prints.push(await readPrint(parts, stone, print, corrections));
  return prints;
}

/** The print that was chosen, where it is read; the last that was read where none was chosen. */
function judgedPrint(stone: TestStone, prints: readonly ReadPrint[]): ReadPrint | null {
  const read = prints.filter(({ reading }) => reading.patches.length > 0);
  if (stone.judgedBy === null) return read.at(-1) ?? null;
  return read.find(({ reading }) => reading.print === stone.judgedBy) ?? null;
}

async function readPrint(
  { store, queue }: ReadingParts,
  stone: TestStone,
  print: TestPrint,
  corrections: readonly HoldCorrection[],
): Promise<ReadPrint> {
  const kept = print.comparisonId === null ? null : await store.comparisons.find(print.comparisonId);
  const named = {
    print: print.id,
    name: print.name,
    comparison: kept?.id ?? null,
    progress: (kept && queue?.progressOf(kept.id)) ?? null,
  };
  if (kept === null)
    return { reading: { ...named, state: 'not-asked', reason: null, patches: [] }, cautions: [] };
  const record = kept.resultKey === null ? null : await store.resultFiles.record(kept.resultKey);
  const reason = record?.reason ?? kept.failure?.message ?? null;
  if (kept.state !== 'measured' || record === null)
    return { reading: { ...named, state: kept.state, reason, patches: [] }, cautions: [] };
  const patches = readPatches(
    stone.patches,
    record,
    corrections.filter((correction) => correction.print === print.id),
  );
  const changed = stone.drawn !== null && !sameReading(kept.request, printRequest(stone, print));
  const cautions: TestStoneCaution[] = [
    ...(changed ? [readBefore(print)] : []),
    ...findingCautions(patches),
    ...cameraCautions(record),
  ];
  return { reading: { ...named, state: 'measured', reason: null, patches }, cautions };
}

function readBefore({ name }: TestPrint): TestStoneCaution {
  return {
    code: 'read-before-change',
    message: `Patches, corners or photographs were changed since ${name} was read: read it again.`,
  };
}

function cameraCautions({ warnings }: ComparisonRecord): TestStoneCaution[] {
  return warnings.map(({ message }) => ({ code: 'camera', message }));
}
