import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { TestStoneEvent, TestStoneEventInput } from '../../records/testStoneEvent.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { SavingParts } from '../saving.ts';
import { noSuchTestStone } from './noSuchTestStone.ts';
import type { ReadingParts } from './readTestStoneReading.ts';
import { listStateOf } from './shownTestStone.ts';

export interface LogParts extends Pick<SavingParts, 'now'> {
  readonly store: SavingParts['store'] & ReadingParts['store'];
}

/** Patches without a verdict, counted before a decision is open: readings lie in files. */
async function untoldOn(store: ReadingParts['store'], id: string): Promise<number> {
  const stone = await store.testStones.find(id);
  return (stone && (await listStateOf({ store }, stone)))?.untold ?? 0;
}

/**
 * Keeps a correction, the opening of a list, the beginning of a blind reading, or an answer of one. Sent again under the same client id, gives the
 * event as it was kept first.
 * @returns `not-found` without the test stone, `reference-unknown` for a print, patch or sitting that it doesn't have
 */
export async function logTestStoneEvent(
  { store, now }: LogParts,
  testStoneId: string,
  input: TestStoneEventInput,
): Promise<Result<TestStoneEvent>> {
  const untold = input.kind === 'list-opened' ? await untoldOn(store, testStoneId) : null;
  return store.decide<TestStoneEvent, Failure>(async (records) => {
    const kept = await records.testStones.eventOf(testStoneId, input.clientId);
    if (kept) return ok(kept);
    const stone = await records.testStones.find(testStoneId);
    if (stone === null) return fail(noSuchTestStone());
    const events = await records.testStones.events(testStoneId);
    const unknown = unknownPart(stone, events, input);
    if (unknown) return fail(unknown);
    const told = input.kind === 'list-opened' ? { ...input.payload, untold: untold ?? 0 } : input.payload;
    const event = {
      ...input,
      payload: told,
      sequence: events.length + 1,
      at: now().toISOString(),
    } as TestStoneEvent;
    await records.testStones.addEvent(testStoneId, event);
    return ok(event);
  });
}

function unknownPart(
  stone: TestStone,
  events: readonly TestStoneEvent[],
  { kind, payload }: TestStoneEventInput,
): Failure | null {
  const missing = (what: string, id: string, found: boolean) =>
    found ? null : failure('reference-unknown', { what, id }, `payload.${what}`);
  const print = (id: string) =>
    missing(
      'print',
      id,
      stone.prints.some((each) => each.id === id),
    );
  const patch = (id: string) =>
    missing(
      'patch',
      id,
      stone.patches.some((each) => each.id === id),
    );
  switch (kind) {
    case 'corrected':
      return print(payload.print) ?? patch(payload.patch);
    case 'sitting-begun':
      return print(payload.print);
    case 'seen': {
      const begun = events.some(
        (event) => event.kind === 'sitting-begun' && event.clientId === payload.sitting,
      );
      return missing('sitting', payload.sitting, begun) ?? patch(payload.patch);
    }
    case 'list-opened':
      return null;
    default:
      return kind satisfies never;
  }
}

/** All that was kept, in order; or `not-found`. */
export async function readTestStoneEvents(
  { store }: { readonly store: Pick<KeptRecords, 'testStones'> },
  testStoneId: string,
): Promise<Result<readonly TestStoneEvent[]>> {
  if ((await store.testStones.find(testStoneId)) === null) return fail(noSuchTestStone());
  return ok(await store.testStones.events(testStoneId));
}
