import type { ToneReading } from './edition.ts';
import type { Logged, LoggedInput } from './logged.ts';

/** How a print came out. */
export type Verdict = 'good' | 'second' | 'torn';

/** What each kind of entry in the ledger says; all else is taken from the entry itself. */
export interface LedgerPayloads {
  readonly impression: {
    readonly verdict: Verdict;
    readonly reason?: string | undefined;
    readonly photograph?: string | null | undefined;
  };
  /** An impression read against its own bare paper; `ageMinutes` since it was pulled. */
  readonly reading: ToneReading & {
    readonly impression: string;
    readonly ageMinutes: number | null;
    readonly photograph?: string | null | undefined;
  };
  /** An impression photographed: it is read as a pull is. `ageMinutes` typed, since it was pulled. */
  readonly photographed: {
    readonly impression: string;
    readonly photograph: string;
    /** ISO 8601 with zone; null where not known. */
    readonly takenAt: string | null;
    readonly ageMinutes: number | null;
  };
  /** An impression looked at again when dry. */
  readonly checked: {
    readonly impression: string;
    readonly verdict: Verdict;
    readonly reason?: string | undefined;
    readonly ageMinutes: number | null;
  };
  readonly charged: { readonly words?: string | undefined };
  readonly paused: { readonly gummed: boolean; readonly words?: string | undefined };
  readonly resumed: { readonly words?: string | undefined };
  readonly note: { readonly words: string };
  /** Takes back the entry of that client id; taking back such an entry restores what it took back. */
  readonly undo: { readonly clientId: string };
}

export type LedgerKind = keyof LedgerPayloads;

/** What happened at the press. */
export type LedgerEntry<Kind extends LedgerKind = LedgerKind> = Logged<LedgerPayloads, Kind>;

/** What a device sends. */
export type LedgerEntryInput = LoggedInput<LedgerPayloads>;

/** An impression as the ledger has it. */
export interface Impression {
  /** Client id of its entry. */
  readonly id: string;
  /** Its number at the press, from 1; taken-back ones don't count. */
  readonly n: number;
  readonly at: string;
  readonly actor: string | null;
  /** As seen last: at the dry check, else at the press. */
  readonly verdict: Verdict;
  readonly reason: string;
  /** The last one. */
  readonly photograph: string | null;
  /** All that count, in the order in which they were logged, each once. */
  readonly photographs: readonly string[];
  readonly reading: LedgerPayloads['reading'] | null;
  readonly checked: LedgerPayloads['checked'] | null;
}

/** A ledger as it stands at a moment. */
export interface LedgerState {
  readonly impressions: readonly Impression[];
  readonly good: number;
  readonly second: number;
  readonly torn: number;
  /** The last charge of the slab; null where none was logged. */
  readonly lastCharge: { readonly at: string; readonly impressionsSince: number } | null;
  readonly charges: number;
  /** null while printing. */
  readonly pause: { readonly since: string; readonly gummed: boolean } | null;
  /** Seconds since the last impression, charge or return; null before the first. */
  readonly stillSeconds: number | null;
  /** The stone has stood ungummed too long. */
  readonly gumNow: boolean;
}
