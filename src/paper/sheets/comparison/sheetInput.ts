import type { ComparisonRecord } from '../../../records/comparison.ts';

export interface SheetPictures {
  /** JPEG of the work rectangle on the stone; of a refused pair the photograph as taken. */
  readonly stone: Uint8Array;
  /** JPEG of the print, turned and mirrored to lie as on the stone; of a refused pair the photograph as taken. */
  readonly proof: Uint8Array;
  /** PNG in stone orientation with lost, filled and scum hatched; null where there are no maps. */
  readonly overlay: Uint8Array | null;
}

export interface ComparisonSheetInput {
  readonly record: ComparisonRecord;
  readonly title: string;
  /** The date as people read it, such as "26 Nov 2026". */
  readonly dateText: string;
  /** Null where none could be made; then the sheet does without. */
  readonly pictures: SheetPictures | null;
  /** Kept in the file's own data only; equal input gives equal bytes. */
  readonly createdAt: Date;
}
