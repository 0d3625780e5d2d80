import { readFile } from 'node:fs/promises';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { ReportPictures } from '../../paper/documents/reportPictures.ts';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import type { SetReport } from '../../records/setReport.ts';
import type { Store } from '../../store/openStore.ts';
import type { WorkRecords } from '../../studio/papers/gaps.ts';
import { type EditionRecords, inPeriod, type ReportInput } from '../../studio/papers/report/reportInput.ts';
import { setReportOf } from '../../studio/papers/report/setReport.ts';
import { comparisonPicture } from '../comparisonFile.ts';
import { engineVersion } from '../engineVersion.ts';
import { readComparison } from '../readComparison.ts';
import { threadModule } from '../threads/runInThread.ts';
import { setSheet } from '../threads/setSheet.ts';
import { readWork } from '../works/findWork.ts';
import { noSuchReport } from './reports.ts';
import type { ReportForm } from './reportThread.ts';
import { readRunsAndPlan, readWorkRecords, type WorkRecordParts } from './workRecords.ts';

export interface SetReportParts extends WorkRecordParts {
  readonly store: WorkRecordParts['store'] &
    Pick<Store, 'reports' | 'editions' | 'ledgers' | 'materials' | 'testStones' | 'folder'>;
}

/** A report with its figures filled from what is kept now; or `not-found`. */
export async function readSetReport(parts: SetReportParts, id: string): Promise<Result<SetReport>> {
  const input = await reportInputOf(parts, id);
  return input.ok ? ok(setReportOf(input.value)) : input;
}

/** The same as a document of its own: one self-contained HTML file, a PDF on A4, or a word processor's file. */
export async function reportDocument(
  parts: SetReportParts,
  id: string,
  form: ReportForm,
): Promise<Result<Uint8Array>> {
  const input = await reportInputOf(parts, id);
  if (!input.ok) return input;
  const pictures: Record<string, ReportPictures> = {};
  for (const entry of input.value.comparisons) pictures[entry.id] = await picturesOf(parts, entry);
  const module = threadModule(import.meta.url, 'reportThread');
  return setSheet(module, { form, report: setReportOf(input.value), pictures });
}

async function reportInputOf(parts: SetReportParts, id: string): Promise<Result<ReportInput>> {
  const { store } = parts;
  const report = await store.reports.find(id);
  if (report === null) return fail(noSuchReport());
  const works: WorkRecords[] = [];
  for (const workId of report.works) {
    const work = await readWorkRecords(parts, workId);
    if (!work.ok) return work;
    const runs = work.value.runs.filter(({ startedAt }) => inPeriod(report, startedAt));
    works.push({ ...work.value, runs });
  }
  const comparisons: ComparisonEntry[] = [];
  for (const comparisonId of report.comparisons) {
    const comparison = await readComparison(parts, comparisonId);
    if (comparison.ok) comparisons.push(comparison.value);
  }
  const editions: EditionRecords[] = [];
  for (const editionId of report.editions) {
    const edition = (await store.editions.find(editionId))!;
    const work = await readWork(parts, edition.workId);
    if (!work.ok) return work;
    const etched = await readRunsAndPlan(parts, edition.workId);
    editions.push({
      edition,
      work: work.value,
      entries: await store.ledgers.entries(editionId),
      ...etched,
    });
  }
  const listed = await store.materials.list({ search: '', putBy: 'all', after: null, limit: 500 });
  return ok({
    report,
    works,
    comparisons,
    editions,
    materials: listed?.page ?? [],
    engine: engineVersion,
    setAt: parts.now().toISOString(),
  });
}

/** Width of the pictures in a report, px: enough for half a page in print. */
const pictureWidthPx = 960;

async function picturesOf(
  parts: SetReportParts,
  { id, record, files }: ComparisonEntry,
): Promise<ReportPictures> {
  const read = async (name: string): Promise<Uint8Array | null> => {
    if (!files.includes(name)) return null;
    const file = await comparisonPicture(parts, id, name, pictureWidthPx);
    return file.ok ? new Uint8Array(await readFile(file.value)) : null;
  };
  const measured = record?.verdict === 'ok';
  return {
    record: measured ? record : null,
    stone: measured ? await read('stone.jpg') : null,
    proof: measured ? await read('proof.jpg') : null,
  };
}
