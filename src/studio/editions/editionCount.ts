import type { Edition } from '../../records/edition.ts';
import type { SheetPart } from '../../records/editionPlan.ts';
import type { LedgerState } from '../../records/ledger.ts';
import { artistProofsFor, goodPrintsWanted } from './sheetCount.ts';

/** How far the printing of an edition is: the same figures wherever they are said. */
export interface EditionCount {
  /** Good prints wanted in all: numbered, artist's proofs, the printer's and the archive's. */
  readonly wanted: number;
  readonly numbered: number;
  readonly artistProofs: number;
  /** Good ones so far, by the last look at each. */
  readonly good: number;
  /** Good ones still to pull; 0 once there are enough. */
  readonly more: number;
  /** Sheets of the good paper for this printing, spoilage with them; null where the plan is not known here. */
  readonly sheets: number | null;
  /** Of those not printed yet; 0 where all are, null as above. */
  readonly sheetsLeft: number | null;
}

/** What is laid out for the proofs before the edition, and gone when it begins. */
const before: ReadonlySet<SheetPart['what']> = new Set(['approval', 'good-to-print']);

/** @param sheets of the plan; null: not known here */
export function editionCount(
  { size, artistProofs }: Pick<Edition, 'size' | 'artistProofs'>,
  { good, impressions }: Pick<LedgerState, 'good' | 'impressions'>,
  sheets: readonly SheetPart[] | null,
): EditionCount {
  const wanted = goodPrintsWanted(size, artistProofs);
  const atPress = sheets?.reduce((sum, part) => sum + (before.has(part.what) ? 0 : part.sheets), 0) ?? null;
  return {
    wanted,
    numbered: size,
    artistProofs: artistProofs ?? artistProofsFor(size),
    good,
    more: Math.max(0, wanted - good),
    sheets: atPress,
    sheetsLeft: atPress === null ? null : Math.max(0, atPress - impressions.length),
  };
}
