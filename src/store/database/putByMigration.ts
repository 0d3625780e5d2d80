/** What is out of its list is put by, as screens say it. SQLite carries the name into indexes and triggers. */
export const putByMigration: readonly string[] = [
  ...[
    'stones',
    'works',
    'batches',
    'kit',
    'pulls',
    'editions',
    'inks',
    'materials',
    'reports',
    'foreign_protocols',
    'test_stones',
    'test_plans',
  ].map((table) => `ALTER TABLE ${table} RENAME COLUMN archived TO put_by`),
  `ALTER TABLE comparisons RENAME COLUMN archived_at TO put_by_at`,
];
