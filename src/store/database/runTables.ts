export interface RunTable {
  readonly id: string;
  /** Chosen by who started it; null where nobody chose one. */
  readonly client_id: string | null;
  readonly work_id: string;
  readonly plan_id: string | null;
  readonly work_version: number;
  readonly started_at: string;
  /** The stage that the work was in when it began; null for runs from before this was kept. */
  readonly work_stage: string | null;
}

/** What happened in a run; rows are added, and the database refuses to change or remove one. */
export interface RunEventTable {
  readonly run_id: string;
  /** From 1, without gaps, within a run. */
  readonly sequence: number;
  readonly client_id: string;
  readonly kind: string;
  /** The device's time, as it was sent. */
  readonly at: string;
  readonly sent_at: string | null;
  /** The server's time. */
  readonly received_at: string;
  readonly actor: string | null;
  readonly device: string | null;
  readonly payload_json: string;
}

/** What a long log amounts to: a cache. */
export interface RunFoldTable {
  readonly run_id: string;
  readonly events: number;
  readonly version: string;
  readonly seal: string;
  readonly fold_json: string;
}

export interface RunTables {
  readonly runs: RunTable;
  readonly run_events: RunEventTable;
  readonly run_folds: RunFoldTable;
}
