import '../entries/Entries.css';
import './Reports.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { Fragment } from 'react';
import { Link } from 'wouter';
import type { Report } from '../../../records/report.ts';
import type { ReportFigure } from '../../../records/setReport.ts';
import {
  openReport,
  putReportBy,
  readSetReport,
  reportKey,
  reportsKey,
  saveReport,
  setReportKey,
} from '../../client/reports.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import {
  type ReportTyped,
  reportFieldId,
  reportFieldWords,
  reportOfTyped,
  reportTroubles,
  reportTyped,
  reportWants,
} from '../../managers/papers/reportForm.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { KeptEntry } from '../entries/KeptEntry.tsx';
import { OpenEntry } from '../entries/OpenEntry.tsx';
import { useKeepEntry } from '../entries/useKeepEntry.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { ReportFields } from './ReportFields.tsx';
import { ReportFiles } from './ReportFiles.tsx';
import { ReportPreview } from './ReportPreview.tsx';

/** One report: its words beside what they come to. */
export default function ReportScreen({ id }: { id: string }) {
  return (
    <OpenEntry
      name="report"
      list={{ href: '/reports', stamp: say('Reports'), words: say('To the reports') }}
      entryKey={reportKey(id)}
      open={() => openReport(id)}
    >
      {(report) => <ReportPage report={report} />}
    </OpenEntry>
  );
}

function ReportPage({ report }: { report: Report }) {
  const queries = useQueryClient();
  const keepEntry = useKeepEntry<Report>(reportKey, reportsKey);
  const keep = (kept: Report) => {
    keepEntry(kept);
    void queries.invalidateQueries({ queryKey: setReportKey(kept.id) });
  };
  const set = useQuery({
    queryKey: setReportKey(report.id),
    queryFn: () => readSetReport(report.id),
    staleTime: 0,
  });
  return (
    <>
      <PageHead stamp={<Link href="/reports">{say('Reports')}</Link>} headline={report.title} />
      <div className="report-page">
        <div className="report-form">
          <KeptEntry
            entry={report}
            listHref="/reports"
            words={{ out: say('Put the report by'), back: say('Bring it back') }}
            keep={keep}
            setPutBy={(putBy) => putReportBy(report.id, report.version, putBy)}
          >
            {(onSaved, key) => (
              <ReportForm key={key} report={report} figures={set.data?.figures ?? []} onSaved={onSaved} />
            )}
          </KeptEntry>
        </div>
        <div className="report-set">
          <p className="stamp">{say('As it stands, with the figures of now')}</p>
          <ReportFiles id={report.id} title={report.title} />
          <StillWanted report={report} />
          {set.error && <FailureNotice failure={shownFailure(set.error)} />}
          {set.data ? (
            <ReportPreview report={set.data} />
          ) : (
            <p className="unseen">{say('Setting the report …')}</p>
          )}
        </div>
      </div>
    </>
  );
}

function ReportForm({
  report,
  figures,
  onSaved,
}: {
  report: Report;
  figures: readonly ReportFigure[];
  onSaved: (kept: Report) => void;
}) {
  const form = useTypedForm<Report, ReportTyped>({
    entry: report,
    typedOf: reportTyped,
    check: reportTroubles,
    send: (typed, entry) => saveReport(report.id, entry!.version, reportOfTyped(typed)),
  });
  const save = async () => {
    const kept = await form.save();
    if (kept) onSaved(kept);
    return kept;
  };
  return (
    <SaveForm
      label={report.title}
      act={say('Save and set')}
      form={form}
      words={reportFieldWords}
      onSave={save}
    >
      <ReportFields form={form} figures={figures} offered={tellsOfAnything(report) ? figures : []} />
    </SaveForm>
  );
}

/** Whether a report was saved with anything that figures could come from. */
function tellsOfAnything({ works, comparisons, editions }: Report): boolean {
  return works.length + comparisons.length + editions.length > 0;
}

/** What is not chosen or written yet, each with the way to its field. */
function StillWanted({ report }: { report: Report }) {
  const wants = reportWants(report);
  if (wants.length === 0) return null;
  return (
    <Notice kind="aside" title={say('Still empty:')}>
      {wants.map((field, index) => (
        <Fragment key={field}>
          {index > 0 && ' · '}
          <a href={`#${reportFieldId(field)}`}>{reportFieldWords[field]}</a>
        </Fragment>
      ))}
    </Notice>
  );
}
