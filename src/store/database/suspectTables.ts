/** One outcome of a separating test, or the cause that was found in the end. */
export interface SuspectOutcomeTable {
  readonly id: string;
  readonly comparison_id: string;
  readonly at: string;
  readonly test: string | null;
  readonly outcome: string | null;
  readonly found: string | null;
}

/** The same of a pull. */
export interface PullSuspectOutcomeTable extends Omit<SuspectOutcomeTable, 'comparison_id'> {
  readonly pull_id: string;
}

export interface SuspectTables {
  readonly pull_suspect_outcomes: PullSuspectOutcomeTable;
  readonly suspect_outcomes: SuspectOutcomeTable;
}
