import type { Kysely } from 'kysely';
import type { Report } from '../../records/report.ts';
import type { Tables } from '../database/tables.ts';
import { type EntryRows, entryRowsIn } from './entryRows.ts';

export type ReportRepository = EntryRows<Report>;

/** The reports' rows of an open database or of a transaction. */
export function reportRepositoryIn(database: Kysely<Tables>): ReportRepository {
  return entryRowsIn<Report>(database, 'reports', ({ title, reader, words }) => [
    title,
    reader,
    ...Object.values(words),
  ]);
}
