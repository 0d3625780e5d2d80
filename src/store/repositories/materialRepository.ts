import type { Kysely } from 'kysely';
import type { Material } from '../../records/material.ts';
import type { Tables } from '../database/tables.ts';
import { type EntryRows, entryRowsIn } from './entryRows.ts';

export type MaterialRepository = EntryRows<Material>;

/** The materials' rows of an open database or of a transaction. */
export function materialRepositoryIn(database: Kysely<Tables>): MaterialRepository {
  return entryRowsIn<Material>(database, 'materials', (material) => [
    material.name,
    material.statements,
    material.note,
    ...(material.hazards ?? []),
  ]);
}
