import type { ComparisonRecord } from '../../records/comparison.ts';

/** What a report shows of one comparison: both pictures lie as one looks at the stone. null: not there. */
export interface ReportPictures {
  readonly record: ComparisonRecord | null;
  /** JPEG. */
  readonly stone: Uint8Array | null;
  readonly proof: Uint8Array | null;
}

/** By the comparisons' ids. */
export type PicturesOfReport = Readonly<Record<string, ReportPictures>>;
