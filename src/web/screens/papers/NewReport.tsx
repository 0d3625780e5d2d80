import '../entries/Entries.css';
import { Link, useLocation } from 'wouter';
import type { Report } from '../../../records/report.ts';
import { addReport, reportKey, reportsKey } from '../../client/reports.ts';
import {
  type ReportTyped,
  reportFieldWords,
  reportOfTyped,
  reportTroubles,
  reportTyped,
} from '../../managers/papers/reportForm.ts';
import { Field } from '../../parts/Field.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { useKeepEntry } from '../entries/useKeepEntry.ts';
import { useTypedForm } from '../useTypedForm.ts';

/** Begins a report with its title; the rest is chosen on its own page. */
export default function NewReport() {
  const [, go] = useLocation();
  const keep = useKeepEntry<Report>(reportKey, reportsKey);
  const form = useTypedForm<Report, ReportTyped>({
    entry: null,
    shelf: say('new report'),
    typedOf: reportTyped,
    check: reportTroubles,
    send: (typed) => addReport(reportOfTyped(typed)),
  });
  const begin = async () => {
    const report = await form.save();
    if (report) {
      keep(report);
      go(`/reports/${report.id}`);
    }
    return report;
  };
  return (
    <>
      <PageHead
        stamp={<Link href="/reports">{say('Reports')}</Link>}
        headline={say('What is it about, and for whom?')}
      />
      <div className="entry-body">
        <SaveForm
          label={say('A new report')}
          act={say('Begin the report')}
          form={form}
          words={reportFieldWords}
          onSave={begin}
        >
          {(['title', 'reader'] as const).map((field) => (
            <Field
              key={field}
              label={reportFieldWords[field]}
              autoComplete="off"
              maxLength={200}
              value={form.values[field]}
              trouble={form.troubleOf(field)}
              onChange={(event) => form.set({ [field]: event.target.value })}
            />
          ))}
        </SaveForm>
      </div>
    </>
  );
}
