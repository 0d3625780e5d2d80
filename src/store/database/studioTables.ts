/** The studio's settings; one row. */
interface StudioSettingsTable {
  readonly one: number;
  readonly version: number;
  readonly changed_at: string;
  /** The draft as JSON. */
  readonly record_json: string;
}

/** A work's deadline. */
interface DeadlineTable {
  readonly work_id: string;
  readonly version: number;
  readonly changed_at: string;
  /** The deadline as JSON; `null` where it was taken away. */
  readonly record_json: string;
}

export interface StudioTables {
  readonly studio_settings: StudioSettingsTable;
  readonly deadlines: DeadlineTable;
}
