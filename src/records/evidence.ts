import type { Features } from './suspects.ts';

export const evidenceSchema = 'stonetone/evidence/2';

/** Drawn and printed coverage of a comparison on coarse cells, row by row: what a later pull is held against. */
export interface EvidenceCells {
  readonly columns: number;
  readonly rows: number;
  readonly cellMm: number;
  /** Drawn coverage in hundredths, whole; null where nothing was read or an outline runs through. */
  readonly drawn: readonly (number | null)[];
  /** Printed coverage in five-hundredths, whole; null likewise. */
  readonly printed: readonly (number | null)[];
}

/** What a comparison's maps show of faults: kept beside its record, so that later pulls can be held against it. */
export interface EvidenceRecord {
  readonly schema: typeof evidenceSchema;
  readonly engine: string;
  /** Which way the stone travelled under the scraper, on the stone as one looks at it. Taken for the longer side unless told. */
  readonly travel: 'down' | 'across';
  readonly features: Features;
  readonly cells: EvidenceCells;
}
