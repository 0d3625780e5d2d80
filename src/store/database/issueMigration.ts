/** What an etch table was saved as once is an issue of it, as screens say it. SQLite carries the name into what refers to it. */
export const issueMigration: readonly string[] = [
  `ALTER TABLE etch_table_versions RENAME TO etch_table_issues`,
];
