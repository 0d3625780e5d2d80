import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Report, ReportDraft } from '../../records/report.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { PageQuery } from '../../store/repositories/pageMark.ts';
import { badMark } from '../badMark.ts';
import { type EntryKind, isPutBy, newEntry, putEntryBy, saveEntry } from '../keptEntry.ts';
import { type Changes, refused, type Saved, type SavingParts, withChanges } from '../saving.ts';

type Parts = Pick<SavingParts, 'store' | 'now'>;
interface ReadParts {
  readonly store: Pick<KeptRecords, 'reports'>;
}

const kind: EntryKind<Report> = {
  shelf: ({ reports }) => reports,
  named: ({ title }) => `the report ${title}`,
  missing: noSuchReport,
  shown: (kept) => kept,
};

export interface ReportPage {
  readonly reports: readonly Report[];
  readonly next: string | null;
}

/** The failure for a report that is not there. */
export function noSuchReport(): Failure {
  return failure('not-found', { what: 'such report' });
}

/** A page of reports, newest first; `body-malformed` where `after` marks no place. */
export async function listReports({ store }: ReadParts, query: PageQuery): Promise<Result<ReportPage>> {
  const listed = await store.reports.list(query);
  return listed === null ? badMark() : ok({ reports: listed.page, next: listed.next });
}

/** One report, put by or not; or `not-found`. */
export async function readReport({ store }: ReadParts, id: string): Promise<Result<Report>> {
  const report = await store.reports.find(id);
  return report === null ? fail(noSuchReport()) : ok(report);
}

/** Enters a report; `reference-unknown` for a work or an edition that is not kept here. */
export function createReport(parts: SavingParts, draft: ReportDraft): Promise<Saved<Report>> {
  return parts.store.decide(async (records) => {
    const unknown = await judgeChosen(records, draft);
    if (unknown) return refused(unknown);
    const report: Report = newEntry(parts, draft);
    await records.reports.add(report);
    return ok(report);
  });
}

/**
 * Saves what a person changed about a report.
 * @returns `stale-save` with the report as it is now, `put-by`, `not-found` or `reference-unknown`
 */
export function changeReport(
  parts: Parts,
  id: string,
  { version, ...changes }: Changes<ReportDraft>,
): Promise<Saved<Report>> {
  return saveEntry(parts, kind, id, version, async (kept, records) => {
    if (kept.putBy) return isPutBy(`The report ${kept.title}`);
    const next = withChanges<Report>(kept, changes);
    const unknown = await judgeChosen(records, next);
    return unknown ? refused(unknown) : ok(next);
  });
}

/** Takes a report off the list, or brings it back; `stale-save` or `not-found`. */
export function putReportBy(
  parts: Parts,
  id: string,
  change: { readonly version: number; readonly putBy: boolean },
): Promise<Saved<Report>> {
  return putEntryBy(parts, kind, id, change);
}

/** Comparisons may go later; works and editions never do. */
async function judgeChosen(
  { works, editions }: KeptRecords,
  draft: Pick<ReportDraft, 'works' | 'editions'>,
): Promise<Failure | null> {
  for (const [index, id] of draft.works.entries())
    if ((await works.find(id)) === null)
      return failure('reference-unknown', { what: 'work', id }, `works[${index}]`);
  for (const [index, id] of draft.editions.entries())
    if ((await editions.find(id)) === null)
      return failure('reference-unknown', { what: 'edition', id }, `editions[${index}]`);
  return null;
}
