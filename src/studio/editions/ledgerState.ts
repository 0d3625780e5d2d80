import type { Impression, LedgerEntry, LedgerPayloads, LedgerState } from '../../records/ledger.ts';
import { countingEntries } from './countingEntries.ts';
import { photographLogged } from './photographLogged.ts';

/** A stone that stands so long between impressions is gummed. Common practice, no source. */
export const gumAfterSeconds = 15 * 60;

/** How a ledger stands. @param entries in order. @param now by the clock that the entries were logged with. */
export function ledgerState(entries: readonly LedgerEntry[], now: Date): LedgerState {
  const counting = countingEntries(entries);
  const impressions = impressionsOf(counting);
  const count = (verdict: Impression['verdict']) =>
    impressions.filter((each) => each.verdict === verdict).length;
  const charge = counting.findLastIndex(({ kind }) => kind === 'charged');
  const pause = pauseOf(counting);
  const moved = counting.findLast(
    ({ kind }) => kind === 'impression' || kind === 'charged' || kind === 'resumed',
  );
  const stillSeconds = moved ? Math.max(0, (now.getTime() - Date.parse(moved.at)) / 1000) : null;
  return {
    impressions,
    good: count('good'),
    second: count('second'),
    torn: count('torn'),
    lastCharge:
      charge < 0
        ? null
        : {
            at: counting[charge]!.at,
            impressionsSince: counting.slice(charge).filter(({ kind }) => kind === 'impression').length,
          },
    charges: counting.filter(({ kind }) => kind === 'charged').length,
    pause,
    stillSeconds,
    gumNow: stillSeconds !== null && stillSeconds > gumAfterSeconds && pause?.gummed !== true,
  };
}

/** The impressions of entries that count, numbered from 1, each with its last reading and check. */
function impressionsOf(counting: readonly LedgerEntry[]): readonly Impression[] {
  const readings = lastByImpression(counting, 'reading');
  const checks = lastByImpression(counting, 'checked');
  const photographs = photographsByImpression(counting);
  return counting
    .filter((entry) => entry.kind === 'impression')
    .map(({ clientId, at, actor, payload }, index) => {
      const checked = checks.get(clientId) ?? null;
      const reading = readings.get(clientId) ?? null;
      return {
        id: clientId,
        n: index + 1,
        at,
        actor,
        verdict: checked?.verdict ?? payload.verdict,
        // why it was a second at the press says nothing of a print that was found good when dry
        reason:
          checked?.reason ?? (checked && checked.verdict !== payload.verdict ? '' : payload.reason) ?? '',
        photograph: photographs.get(clientId)?.at(-1) ?? null,
        photographs: photographs.get(clientId) ?? [],
        reading,
        checked,
      };
    });
}

function lastByImpression<Kind extends 'reading' | 'checked'>(
  counting: readonly LedgerEntry[],
  kind: Kind,
): ReadonlyMap<string, LedgerPayloads[Kind]> {
  return new Map(
    counting
      .filter((entry) => entry.kind === kind)
      .map(({ payload }) => [(payload as LedgerPayloads[Kind]).impression, payload as LedgerPayloads[Kind]]),
  );
}

function photographsByImpression(counting: readonly LedgerEntry[]): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const entry of counting) {
    const shown = photographLogged(entry);
    if (shown === null) continue;
    const before = (found.get(shown.impression) ?? []).filter((one) => one !== shown.photograph);
    found.set(shown.impression, [...before, shown.photograph]);
  }
  return found;
}

/** Kinds that tell of a print or in words, and move nothing at the press. */
const asides: ReadonlySet<LedgerEntry['kind']> = new Set(['note', 'reading', 'photographed', 'checked']);

/** A pause lasts until somebody returns, prints or charges. */
function pauseOf(counting: readonly LedgerEntry[]): LedgerState['pause'] {
  const last = counting.findLast(({ kind }) => !asides.has(kind));
  return last?.kind === 'paused' ? { since: last.at, gummed: last.payload.gummed } : null;
}
