/** Pulls that are impressions of an edition: outside the numbers of their work's proofs, one an impression. */
export const impressionMigration: readonly string[] = [
  `ALTER TABLE pulls ADD COLUMN edition_id TEXT REFERENCES editions (id) ON DELETE RESTRICT`,
  `ALTER TABLE pulls ADD COLUMN impression TEXT`,
  `DROP INDEX pulls_by_number`,
  `CREATE UNIQUE INDEX pulls_by_number ON pulls (work_id, number) WHERE archived = 0 AND edition_id IS NULL`,
  `CREATE UNIQUE INDEX pulls_by_impression ON pulls (edition_id, impression) WHERE edition_id IS NOT NULL`,
];
