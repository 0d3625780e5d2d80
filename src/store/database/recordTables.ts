/** What every record that a person edits carries beside its own columns. */
export interface EditedTable {
  readonly id: string;
  readonly created_at: string;
  readonly changed_at: string;
  /** Raised by one at every save. */
  readonly version: number;
  /** 1 once taken out of its list. */
  readonly put_by: number;
  /** 1 for the invented studio's own. */
  readonly sample: number;
  /** Folded words for the search. */
  readonly search_text: string;
  /** The draft as JSON; last, so that lists need not read it. */
  readonly record_json: string;
}

export interface StoneTable extends EditedTable {
  readonly name: string;
  /** The folded name, figures padded, so that S-2 stands before S-10. */
  readonly name_key: string;
  readonly width_mm: number;
  readonly height_mm: number;
  readonly colour: string;
}

export interface WorkTable extends EditedTable {
  readonly stone_id: string;
  readonly title: string;
  readonly stage: string;
  /** 1 where it was entered with a past. */
  readonly halfway: number;
  readonly zone_count: number;
}

export interface BatchTable extends EditedTable {
  readonly kind: string;
}

/** Which photographs a stone stands on; keeps a photograph from vanishing under it. */
export interface StonePhotographTable {
  readonly stone_id: string;
  readonly photograph_id: string;
}

export interface WorkPhotographTable {
  readonly work_id: string;
  readonly photograph_id: string;
}

/** Which zones of which works are in which medium. */
export interface WorkMediumTable {
  readonly work_id: string;
  readonly medium: string;
  /** Name of the first such zone. */
  readonly zone_name: string;
}

/** An etch table's issues; a row is never changed. */
export interface EtchTableIssueTable {
  readonly table_id: string;
  readonly version: number;
  readonly name: string;
  /** 1 for those that every studio starts with. */
  readonly starting: number;
  readonly saved_at: string;
  readonly rows_json: string;
}

/** A medium of the studio's own. */
export interface MediumTable {
  readonly id: string;
  readonly name: string;
  readonly version: number;
  readonly rule_json: string;
}

/** A kept plan of a first or second etch; a row is never changed. */
export interface PlanTable {
  readonly id: string;
  readonly work_id: string;
  readonly line: 'first' | 'second';
  readonly created_at: string;
  readonly work_version: number;
  readonly table_id: string;
  readonly table_version: number;
  readonly tannic_batch_id: string | null;
  /** `true`, `false`, `unknown`; empty for a second etch, which has no schedule. */
  readonly feasible: string;
  readonly record_json: string;
}

export interface RecordTables {
  readonly stones: StoneTable;
  readonly stone_photographs: StonePhotographTable;
  readonly works: WorkTable;
  readonly work_photographs: WorkPhotographTable;
  readonly work_media: WorkMediumTable;
  readonly batches: BatchTable;
  readonly etch_table_issues: EtchTableIssueTable;
  readonly media: MediumTable;
  readonly plans: PlanTable;
}
