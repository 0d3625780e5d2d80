import { Link } from 'wouter';
import type { Report } from '../../../records/report.ts';
import { listReports, reportsKey } from '../../client/reports.ts';
import { EntryListPage } from '../entries/EntryListPage.tsx';

/** What to do first. */
const first = (
  <p>
    A report tells whoever pays what was tried, what was found and what was used. You write the words; every
    figure is filled from the records when it is set, and what nobody recorded is listed.
  </p>
);

/** Reports, newest first. */
export default function ReportList() {
  return (
    <EntryListPage
      list={{ key: reportsKey, read: listReports, itemsOf: (page) => page.reports }}
      head={() => ({
        stamp: 'Papers',
        headline: 'Reports',
        act: { href: '/reports/new', words: 'Begin a report' },
        emptyTitle: 'No report is begun yet',
        emptyWords: first,
      })}
      search="Search titles and words"
      shelves="Which reports"
      label="Reports"
      line={(report) => <ReportLine key={report.id} report={report} />}
      noneFound="No report is found so. Ask for fewer words."
      older="Show older reports"
    />
  );
}

function ReportLine({ report }: { report: Report }) {
  const { id, title, reader, from, to, works } = report;
  return (
    <li>
      <Link href={`/reports/${id}`}>
        <span className="entry-name">
          <b className="big">{title}</b>
        </span>
        <span>{reader === '' ? 'for nobody named' : `for ${reader}`}</span>
        <span className="entry-end">
          {from ?? '…'} – {to ?? '…'}, {works.length} {works.length === 1 ? 'work' : 'works'}
        </span>
      </Link>
    </li>
  );
}
