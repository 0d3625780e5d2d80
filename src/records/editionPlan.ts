import type { Measured } from '../foundation/measured.ts';
import type { EditionDraft, GrainSide, SheetMm } from './edition.ts';

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
