/** One outcome of a separating test, or the cause that was found in the end. */
export interface SuspectOutcomeTable {
  readonly id: string;
  readonly comparison_id: string;
  readonly at: string;
  readonly test: string | null;
  readonly outcome: string | null;
  readonly found: string | null;
}

export interface SuspectTables {
  readonly suspect_outcomes: SuspectOutcomeTable;
}
