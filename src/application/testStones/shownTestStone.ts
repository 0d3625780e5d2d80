import { ok, type Result } from '../../foundation/result.ts';
import type { PrintReading, TestStoneReading } from '../../records/patchReading.ts';
import type { ListState, TestStone } from '../../records/testStone.ts';
import { listState, sealedStone } from '../../studio/trials/reading/listState.ts';
import type { Saved } from '../saving.ts';
import { type ReadingParts, readPrints, readTestStoneReading } from './readTestStoneReading.ts';

/** Whether the list of a test stone is sealed; null for one that was not made of a plan: it never was. */
export async function listStateOf(parts: ReadingParts, stone: TestStone): Promise<ListState | null> {
  if (!stone.planned) return null;
  const events = await parts.store.testStones.events(stone.id);
  return listState(stone, events, await readPrints(parts, stone));
}

/** A test stone as it may be shown: a planned one says whether its list is sealed, and keeps it while it is. */
export async function shownTestStone(parts: ReadingParts, stone: TestStone): Promise<TestStone> {
  const list = await listStateOf(parts, stone);
  if (!list) return stone;
  return { ...(list.sealed ? sealedStone(stone) : stone), list };
}

/** The same of several, in their order. */
export async function shownTestStones(
  parts: ReadingParts,
  stones: readonly TestStone[],
): Promise<readonly TestStone[]> {
  const shown: TestStone[] = [];
  for (const stone of stones) shown.push(await shownTestStone(parts, stone));
  return shown;
}

/** The same of what a save answers, refused or not. */
export async function shownSaved(parts: ReadingParts, saved: Saved<TestStone>): Promise<Saved<TestStone>> {
  if (saved.ok) return ok(await shownTestStone(parts, saved.value));
  const { current } = saved.error;
  if (!current) return saved;
  return { ok: false, error: { ...saved.error, current: await shownTestStone(parts, current) } };
}

/** What was read of a test stone, without what patches got while its list is sealed; or `not-found`. */
export async function shownTestStoneReading(
  parts: ReadingParts,
  id: string,
): Promise<Result<TestStoneReading>> {
  const reading = await readTestStoneReading(parts, id);
  if (!reading.ok) return reading;
  const stone = (await parts.store.testStones.find(id))!;
  const list = await listStateOf(parts, stone);
  return list?.sealed ? ok(sealedReading(reading.value)) : reading;
}

/** Cautions that speak of what patches got. */
const telling: ReadonlySet<string> = new Set(['no-control', 'no-replicates', 'treatments-unknown']);

function sealedReading(reading: TestStoneReading): TestStoneReading {
  const sealed = <Print extends Pick<PrintReading, 'patches'>>(print: Print): Print => ({
    ...print,
    patches: print.patches.map((patch) => ({
      ...patch,
      treatment: {},
      intention: patch.intention === 'control' ? 'image' : patch.intention,
    })),
  });
  return {
    ...reading,
    prints: reading.prints.map(sealed),
    findings: sealed({ patches: reading.findings }).patches,
    cautions: reading.cautions.filter(({ code }) => !telling.has(code)),
  };
}
