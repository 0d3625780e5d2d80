import type { Kysely } from 'kysely';
import type { Report } from '../../records/report.ts';
import type { Tables } from '../database/tables.ts';
import { type EntryRows, entryRowsIn } from './entryRows.ts';
import { reportFromStored } from './storedReport.ts';

export type ReportRepository = EntryRows<Report>;

/** The reports' rows of an open database or of a transaction. */
export function reportRepositoryIn(database: Kysely<Tables>): ReportRepository {
  const rows = entryRowsIn<Report>(database, 'reports', ({ title, reader, words }) => [
    title,
    reader,
    ...Object.values(words).flatMap((pieces) =>
      pieces.map((piece) => (typeof piece === 'string' ? piece : piece.figure)),
    ),
  ]);
  return {
    ...rows,
    async find(id) {
      const stored = await rows.find(id);
      return stored && reportFromStored(stored);
    },
    async list(query) {
      const listed = await rows.list(query);
      return listed && { ...listed, page: listed.page.map(reportFromStored) };
    },
  };
}
