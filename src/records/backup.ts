/** What the list of a backup says it is. */
export const backupSchema = 'stonetone/backup/1';

/** One file of the data folder as a backup holds it. */
export interface BackupPart {
  /** Its place in the data folder, such as `photographs/ab/….jpeg`; always with slashes. */
  readonly name: string;
  readonly bytes: number;
  /** Of its bytes, hexadecimal. */
  readonly sha256: string;
}

/** What a backup holds: `manifest.json` inside it. */
export interface BackupManifest {
  readonly schema: typeof backupSchema;
  /** Name and version of the measuring engine that was there when it was written. */
  readonly engine: string;
  /** When it was begun, in UTC: all that was acknowledged before is in it. */
  readonly madeAt: string;
  /** Version of the database's tables; an earlier one is brought up to date when it is next opened. */
  readonly databaseVersion: number;
  readonly parts: readonly BackupPart[];
  /** What was amiss in the data folder itself, in sentences: photographs that were gone or no longer fit their hash. */
  readonly concerns: readonly string[];
}
