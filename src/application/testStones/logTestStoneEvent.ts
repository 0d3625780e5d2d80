import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { TestStone } from '../../records/testStone.ts';
import type { TestStoneEvent, TestStoneEventInput } from '../../records/testStoneEvent.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { SavingParts } from '../saving.ts';
import { noSuchTestStone } from './testStones.ts';

/**
 * Keeps a correction, the beginning of a blind reading, or an answer of one. Sent again under the same client id, gives the
 * event as it was kept first.
 * @returns `not-found` without the test stone, `reference-unknown` for a print, patch or sitting that it doesn't have
 */
export function logTestStoneEvent(
  { store, now }: Pick<SavingParts, 'store' | 'now'>,
  testStoneId: string,
  input: TestStoneEventInput,
): Promise<Result<TestStoneEvent>> {
  return store.decide<TestStoneEvent, Failure>(async (records) => {
    const kept = await records.testStones.eventOf(testStoneId, input.clientId);
    if (kept) return ok(kept);
    const stone = await records.testStones.find(testStoneId);
    if (stone === null) return fail(noSuchTestStone());
    const events = await records.testStones.events(testStoneId);
    const unknown = unknownPart(stone, events, input);
    if (unknown) return fail(unknown);
    const event = { ...input, sequence: events.length + 1, at: now().toISOString() } as TestStoneEvent;
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
