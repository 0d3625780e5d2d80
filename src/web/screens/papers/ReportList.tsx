import { Link } from 'wouter';
import type { Report } from '../../../records/report.ts';
import { listReports, reportsKey } from '../../client/reports.ts';
import { dayOf } from '../../words/moments.ts';
import { say } from '../../words/say.ts';
import { EntryListPage } from '../entries/EntryListPage.tsx';

/** What to do first. */
const first = (
  <p>
    {say(
      'A report tells whoever pays what was tried, what was found and what was used. You write the words; every figure is filled from the records when it is set, and what nobody recorded is listed.',
    )}
  </p>
);

/** Reports, newest first. */
export default function ReportList() {
  return (
    <EntryListPage
      list={{ key: reportsKey, read: listReports, itemsOf: (page) => page.reports }}
      head={() => ({
        stamp: say('Reports'),
        headline: say('Reports'),
        act: { href: '/reports/new', words: say('Begin a report') },
        emptyTitle: say('No report is begun yet'),
        emptyWords: first,
      })}
      search={say('Search titles and words')}
      shelves={say('Which reports')}
      label={say('Reports')}
      line={(report) => <ReportLine key={report.id} report={report} />}
      noneFound={say('No report is found so. Ask for fewer words.')}
      older={say('Show older reports')}
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
        <span>{reader === '' ? say('for nobody named') : say('for {reader}', { reader })}</span>
        <span className="entry-end">
          {say('{from} – {to}, {count} {count, plural, one {work} other {works}}', {
            from: from === null ? '…' : dayOf(from),
            to: to === null ? '…' : dayOf(to),
            count: works.length,
          })}
        </span>
      </Link>
    </li>
  );
}
