import type { DeviceTable } from './deviceTables.ts';
import type { EditionTables } from './editionTables.ts';
import type { InkTable } from './inkTables.ts';
import type { KitTable } from './kitTables.ts';
import type { PullTables } from './pullTables.ts';
import type { EditedTable, RecordTables } from './recordTables.ts';
import type { RunTables } from './runTables.ts';
import type { StudioTables } from './studioTables.ts';
import type { SuspectTables } from './suspectTables.ts';
import type { TestStoneTables } from './testStoneTables.ts';

/** One kept photograph; its bytes lie beside the database under their hash. */
export interface PhotographTable {
  /** SHA-256 of the kept bytes, hexadecimal. */
  readonly id: string;
  readonly file_name: string;
  /** How the bytes are coded, such as `jpeg`; also the file's ending on disk. */
  readonly kind: string;
  readonly width_px: number;
  readonly height_px: number;
  readonly byte_count: number;
  readonly added_at: string;
}

/** One comparison; its measured files lie beside the database under `result_key`. */
export interface ComparisonTable {
  readonly id: string;
  readonly title: string;
  readonly created_at: string;
  readonly state: string;
  /** 1 for the invented studio's own. */
  readonly sample: number;
  readonly request_json: string;
  readonly finding: string | null;
  readonly failure_json: string | null;
  readonly result_key: string | null;
  /** When it last joined the measuring queue. */
  readonly queued_at: string;
  /** How often the program ended while measuring it, since it was last asked for. */
  readonly interruptions: number;
  readonly put_by_at: string | null;
  /** Folded words of title, zones and finding, for the search. */
  readonly search_text: string;
}

/** Which photographs a comparison stands on; keeps a photograph from vanishing under it. */
export interface ComparisonPhotographTable {
  readonly comparison_id: string;
  readonly photograph_id: string;
}

export interface Tables
  extends RecordTables,
    RunTables,
    PullTables,
    EditionTables,
    StudioTables,
    SuspectTables,
    TestStoneTables {
  readonly kit: KitTable;
  readonly devices: DeviceTable;
  readonly materials: EditedTable;
  readonly reports: EditedTable;
  readonly foreign_protocols: EditedTable;
  readonly inks: InkTable;
  readonly photographs: PhotographTable;
  readonly comparisons: ComparisonTable;
  readonly comparison_photographs: ComparisonPhotographTable;
}
