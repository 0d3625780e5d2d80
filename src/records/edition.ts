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
  readonly putBy: boolean;
  /** Raised at every save, of the prints too; a save must name the version it started from. */
  readonly version: number;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly sample: boolean;
}
