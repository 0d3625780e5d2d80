import { ok, type Result } from '../../foundation/result.ts';
import type { SaveRefusal } from '../../records/saving.ts';
import type { RoomNoise } from '../../records/workSeries.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { pullGroups, repeatedReadings } from '../../studio/proofs/pullReadings.ts';
import { roomNoise } from '../../studio/proofs/roomNoise.ts';
import { type Saved, type SavingParts, stale } from '../saving.ts';
import { type ReadingsParts, readingsOf } from './readingsOf.ts';

/** The newest sheets count: lamps and camera change over the years. Our rule. */
const newestSheets = 12;

export interface RoomNoiseParts {
  readonly store: ReadingsParts['store'] & Pick<KeptRecords, 'pulls' | 'series'>;
}

/** σ of one reading in this room, from all of its works. */
export async function readRoomNoise(parts: RoomNoiseParts): Promise<RoomNoise> {
  const { pullMeasurings, pulls, series } = parts.store;
  const repeated = await pullMeasurings.repeated(newestSheets);
  const sheets: (readonly (readonly number[])[])[] = [];
  for (const id of [...new Set(repeated.map(({ pullId }) => pullId))]) {
    const pull = (await pulls.find(id))!;
    sheets.push(repeatedReadings(pullGroups(pull, await readingsOf(parts, [pull]))));
  }
  return roomNoise(sheets, await series.typedNoise());
}

/** Keeps what a person typed for σ until there are repeats; `stale-save` where somebody typed since. */
export async function typeRoomNoise(
  parts: RoomNoiseParts & Pick<SavingParts, 'store' | 'now'>,
  { version, typed }: { readonly version: number; readonly typed: number | null },
): Promise<Saved<RoomNoise>> {
  const at = parts.now().toISOString();
  const saved: Result<boolean> = await parts.store.decide(async ({ series }) =>
    ok(await series.saveTypedNoise(typed, version, at)),
  );
  const now = await readRoomNoise(parts);
  if (saved.ok && saved.value) return ok(now);
  return stale(
    'how far a reading strays in this room',
    { yours: version, kept: now.version },
    now,
  ) satisfies Result<never, SaveRefusal<RoomNoise>>;
}
