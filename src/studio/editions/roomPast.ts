import type { RoomPast } from '../../records/editionPlan.ts';
import type { LedgerEntry } from '../../records/ledger.ts';
import { countingEntries } from './countingEntries.ts';
import { ledgerState } from './ledgerState.ts';

/** An interval longer than this is a pause that nobody logged, minutes. Our rule. */
const longestInterval = 30;

/** What ledgers together say of spoilage and pace. @param ledgers each in order. */
export function roomPast(ledgers: readonly (readonly LedgerEntry[])[]): RoomPast {
  const states = ledgers.map((entries) => ledgerState(entries, new Date(0)));
  const sum = (of: (state: (typeof states)[number]) => number) =>
    states.reduce((total, state) => total + of(state), 0);
  return {
    impressions: sum(({ impressions }) => impressions.length),
    spoiled: sum(({ second, torn }) => second + torn),
    intervalsMinutes: ledgers.flatMap(intervalsOf),
  };
}

/** Minutes between neighbouring impressions of one device with no pause between. */
function intervalsOf(entries: readonly LedgerEntry[]): readonly number[] {
  const found: number[] = [];
  let before: LedgerEntry | null = null;
  for (const entry of countingEntries(entries)) {
    if (entry.kind === 'paused') before = null;
    if (entry.kind !== 'impression') continue;
    if (before !== null && before.device === entry.device) {
      const minutes = (Date.parse(entry.at) - Date.parse(before.at)) / 60_000;
      if (minutes > 0 && minutes <= longestInterval) found.push(minutes);
    }
    before = entry;
  }
  return found;
}
