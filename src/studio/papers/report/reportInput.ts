import type { ComparisonEntry } from '../../../records/comparisonEntry.ts';
import type { Edition } from '../../../records/edition.ts';
import type { LedgerEntry } from '../../../records/ledger.ts';
import type { Material } from '../../../records/material.ts';
import type { Report } from '../../../records/report.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { WorkRecords } from '../gaps.ts';

/** A chosen edition with its ledger and its work. */
export interface EditionRecords {
  readonly edition: Edition;
  readonly work: WorkEntry;
  readonly entries: readonly LedgerEntry[];
  readonly plan: WorkRecords['plan'];
  readonly runs: WorkRecords['runs'];
}

/** All that a report is set from, as it is kept at that moment. */
export interface ReportInput {
  readonly report: Report;
  /** The chosen works, with the runs that began in the period. */
  readonly works: readonly WorkRecords[];
  readonly comparisons: readonly ComparisonEntry[];
  readonly editions: readonly EditionRecords[];
  /** The hazard register. */
  readonly materials: readonly Material[];
  readonly engine: string;
  readonly setAt: string;
}

/** Whether a moment lies in a report's period, by its own clock's day. */
export function inPeriod({ from, to }: Pick<Report, 'from' | 'to'>, moment: string): boolean {
  const day = moment.slice(0, 10);
  return (from === null || day >= from) && (to === null || day <= to);
}
