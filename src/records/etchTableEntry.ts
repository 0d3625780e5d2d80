import type { EtchTable } from './etch.ts';

/** One kept version of an etch table. */
export interface EtchTableIssue {
  readonly table: EtchTable;
  readonly savedAt: string;
  /** One of those that every studio starts with: it is copied, never edited. */
  readonly starting: boolean;
}

/** An etch table as the list shows it. */
export interface EtchTableSummary {
  readonly id: string;
  readonly name: string;
  /** The newest version. */
  readonly version: number;
  readonly starting: boolean;
  readonly savedAt: string;
}

/** What changed between two issues. */
export interface EtchTableChanges {
  readonly from: number;
  readonly to: number;
  /** None where nothing changed. */
  readonly sentences: readonly string[];
}
