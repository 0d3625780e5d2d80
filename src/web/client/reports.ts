import type { Report, ReportDraft } from '../../records/report.ts';
import type { SetReport } from '../../records/setReport.ts';
import { ask, withJson } from './ask.ts';
import { inPageWords } from './inPageWords.ts';
import { type ListQuery, pageAddress } from './pages.ts';

export const reportsKey = ['reports'] as const;
export const reportKey = (id: string) => ['report', id] as const;
export const setReportKey = (id: string) => ['set-report', id] as const;

/** One page of reports, newest first. */
export interface ReportPage {
  readonly reports: readonly Report[];
  readonly next: string | null;
}

export function listReports(
  query: ListQuery,
  after: string | null,
  signal?: AbortSignal,
): Promise<ReportPage> {
  return ask(pageAddress('/api/reports', query, after), signal ? { signal } : {});
}

export function openReport(id: string): Promise<Report> {
  return ask(`/api/reports/${id}`);
}

export function addReport(report: ReportDraft): Promise<Report> {
  return ask('/api/reports', withJson('POST', report));
}

/** Saves a report; refused with the report as it is now where somebody saved since `version`. */
export function saveReport(id: string, version: number, report: ReportDraft): Promise<Report> {
  return ask(`/api/reports/${id}`, withJson('PATCH', { ...report, version }));
}

/** Takes a report off the list, or brings it back. */
export function putReportBy(id: string, version: number, putBy: boolean): Promise<Report> {
  return ask(`/api/reports/${id}/put-by`, withJson('PUT', { version, putBy }));
}

/** The report with its figures filled from what is kept now. */
export function readSetReport(id: string): Promise<SetReport> {
  return ask(`/api/reports/${id}/report.json`);
}

/** Where a report lies as a file to hand out. */
export function reportFile(id: string, form: 'html' | 'pdf' | 'docx'): string {
  return inPageWords(`/api/reports/${id}/report.${form}`);
}
