export interface PullTable {
  readonly id: string;
  readonly work_id: string;
  /** Unique within a work among the proofs that are not put by. */
  readonly number: number;
  readonly created_at: string;
  readonly changed_at: string;
  /** Raised by one at every save. */
  readonly version: number;
  readonly put_by: number;
  /** 1 for the invented studio's own. */
  readonly sample: number;
  /** The draft as JSON. */
  readonly record_json: string;
  /** The edition that it is an impression of, with the client id of its entry in the ledger; null for a proof. */
  readonly edition_id: string | null;
  readonly impression: string | null;
}

/** The reading of one photograph of a pull; its row is the place in the measuring queue. */
export interface PullMeasuringTable {
  readonly pull_id: string;
  readonly photograph_id: string;
  /** 0 where the photograph was taken off the pull since. */
  readonly attached: number;
  readonly state: string;
  readonly queued_at: string;
  readonly result_key: string | null;
  readonly failure_json: string | null;
  /** How often the program ended while measuring it, since it was last asked for. */
  readonly interruptions: number;
}

export interface SeriesSettingsTable {
  readonly work_id: string;
  readonly version: number;
  readonly changed_at: string;
  readonly record_json: string;
}

/** What was typed for σ of the room, newest version last. */
export interface RoomNoiseTable {
  readonly version: number;
  readonly typed: number | null;
  readonly saved_at: string;
}

/** Good to print as given; rows are added, and the database refuses to change or remove one. */
export interface ApprovalTable {
  readonly id: string;
  readonly work_id: string;
  readonly pull_id: string;
  readonly given_at: string;
  readonly record_json: string;
}

export interface ApprovalWithdrawalTable {
  readonly approval_id: string;
  readonly at: string;
  readonly who: string;
  readonly why: string;
}

export interface PullTables {
  readonly pulls: PullTable;
  readonly pull_measurings: PullMeasuringTable;
  readonly series_settings: SeriesSettingsTable;
  readonly room_noise: RoomNoiseTable;
  readonly approvals: ApprovalTable;
  readonly approval_withdrawals: ApprovalWithdrawalTable;
}
