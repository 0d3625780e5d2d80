import type { Measured } from '../foundation/measured.ts';
import type { SeriesTone } from './proofSeries.ts';

/** Width and height, mm. */
export type SheetMm = readonly [widthMm: number, heightMm: number];

/** Along which side of a sheet its fibres lie. */
export type GrainSide = 'long' | 'short';

/** The paper of an edition: the parent sheet as it is bought, and the piece that goes through the press. */
export interface EditionPaper {
  readonly name: string;
  /** null: not known. */
  readonly sheetMm: SheetMm | null;
  readonly sheetGrain: GrainSide | 'unknown';
  /** null: the parent sheet is printed whole. */
  readonly pieceMm: SheetMm | null;
  /** Along which side of the piece the fibres are wanted. */
  readonly pieceGrain: GrainSide | 'any';
  /** Strip that every tear costs, mm. */
  readonly tearLossMm: number;
  readonly gramsPerM2: number | null;
  readonly damped: 'yes' | 'no' | 'unknown';
}

/** Darkness of lights, middles and darks, 0..1; null where not read. */
export type ToneReading = Readonly<Record<SeriesTone, number | null>>;

/** What a person writes about an edition; empty words and null mean: not recorded. */
export interface EditionDraft {
  readonly title: string;
  /** Signed and numbered prints asked for. */
  readonly size: number;
  /** null: by the rule, one in ten and at least one. */
  readonly artistProofs: number | null;
  readonly artist: string;
  readonly printer: string;
  readonly paper: EditionPaper;
  readonly ink: string;
  /** Area that carries ink, as if every place were covered whole, cm²; null: not known. */
  readonly inkedCm2: number | null;
  readonly press: string;
  readonly drawingMaterials: string;
  readonly etches: string;
  /** Places on the drying rack; null: not known. */
  readonly rackPlaces: number | null;
  /** The pull that was approved; null: none, or not kept here. */
  readonly approvalPullId: string | null;
  /** How the approval proof reads, from which drift is told. */
  readonly approval: ToneReading;
  readonly approvedBy: string;
  readonly chop: string;
  readonly signature: string;
  /** ISO date; null: not yet. */
  readonly signedOn: string | null;
  readonly cancellation: string;
  readonly cancelledOn: string | null;
  readonly note: string;
}

/** What a curated print is. */
export const printKinds = [
  'edition',
  'artist',
  'printer',
  'trial',
  'approval',
  'archive',
  'cancellation',
  'destroyed',
] as const;
export type PrintKind = (typeof printKinds)[number];

/** Kinds of which there may be several, told apart by their numbers. */
export const numberedKinds = [
  'edition',
  'artist',
  'printer',
  'trial',
] as const satisfies readonly PrintKind[];

/** What was made of one impression when the edition was curated. */
export interface CuratedPrint {
  /** Client id of the impression's entry in the ledger. */
  readonly impression: string;
  readonly kind: PrintKind;
  /** From 1; null for kinds that carry none. */
  readonly number: number | null;
}

/** An edition as it is kept, with its curated prints. */
export interface Edition extends EditionDraft {
  readonly id: string;
  readonly workId: string;
  readonly prints: readonly CuratedPrint[];
  readonly archived: boolean;
  /** Raised at every save, of the prints too; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}

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

/** What happened at the press, as it was logged; never changed. */
export type LedgerEntry<Kind extends LedgerKind = LedgerKind> = {
  readonly [K in Kind]: {
    /** 1 for a ledger's first, rising by one in the order in which the server kept them. */
    readonly sequence: number;
    /** Chosen by who logs it, so that sending it again makes no second one. */
    readonly clientId: string;
    readonly kind: K;
    /** When it happened by the device's own clock, ISO 8601 with zone. */
    readonly at: string;
    readonly sentAt: string | null;
    /** When it was kept, by the server's clock. */
    readonly receivedAt: string;
    readonly actor: string | null;
    readonly device: string | null;
    readonly payload: LedgerPayloads[K];
  };
}[Kind];

/** What a device sends: the server adds its time and the sequence number. */
export type LedgerEntryInput = Omit<LedgerEntry, 'sequence' | 'receivedAt' | 'kind' | 'payload'> & {
  readonly kind: LedgerKind;
  readonly payload: unknown;
};

/** What this room's ledgers say of spoilage and pace. */
export interface RoomPast {
  readonly impressions: number;
  /** Seconds and torn ones. */
  readonly spoiled: number;
  /** Minutes between neighbouring impressions with no pause between, in any order. */
  readonly intervalsMinutes: readonly number[];
}

/** What an edition is planned from. */
export type EditionQuestion = Pick<
  EditionDraft,
  'size' | 'artistProofs' | 'paper' | 'inkedCm2' | 'rackPlaces'
> & { readonly past: RoomPast };

/** Sheets for one purpose. */
export interface SheetPart {
  readonly what: 'edition' | 'artist' | 'approval' | 'printer' | 'archive' | 'good-to-print' | 'spoilage';
  readonly sheets: number;
  readonly words: string;
}

/** One piece torn from a parent sheet, mm from its top left corner, the sheet lying with its long side across. */
export interface TornPiece {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** How pieces are torn from a parent sheet by a plain grid. */
export interface TearDown {
  /** The parent sheet, long side first. */
  readonly sheetMm: SheetMm;
  readonly sheetGrain: GrainSide | 'unknown';
  /** Along which side of the piece its fibres then lie. */
  readonly pieceGrain: GrainSide | 'unknown';
  readonly pieces: readonly TornPiece[];
  /** 0..1 of the sheet's area that becomes pieces. */
  readonly used: number;
  /** Parent sheets needed; null where no piece fits. */
  readonly parentSheets: number | null;
  /** What to mind, in sentences. */
  readonly sentences: readonly string[];
}

/** What an edition needs. Every figure carries its basis. */
export interface EditionPlan {
  readonly sheets: readonly SheetPart[];
  readonly sheetsInAll: number;
  /** Good prints that the press owes: the edition, artist's, printer's and archive's. */
  readonly goodWanted: number;
  /** Spoiled sheets as a share of the edition. */
  readonly spoilage: Measured & { readonly impressions: number };
  /** Newsprint before the good paper. */
  readonly newsprint: Measured;
  /** null where the size of sheet or piece is not known. */
  readonly tearDown: TearDown | null;
  /** Mass of all pieces dry, g; null where grammage or size is not known. */
  readonly paperGrams: Measured | null;
  /** How much a damp piece grows along its long and its short side, mm; null where its size is not known or it stays dry. */
  readonly growthMm: { readonly long: Measured; readonly short: Measured } | null;
  /** null where the inked area is not known. */
  readonly inkGrams: Measured | null;
  /** Minutes at the press with two people. */
  readonly minutes: Measured;
  /** Places on the drying rack, one a print. */
  readonly rackPlaces: { readonly needed: number; readonly missing: number | null };
  /** What to do and to mind, in sentences. */
  readonly sentences: readonly string[];
}

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
