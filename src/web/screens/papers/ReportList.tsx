import '../entries/Entries.css';
import { Link } from 'wouter';
import type { Report } from '../../../records/report.ts';
import { listReports, reportsKey } from '../../client/reports.ts';
import { FoundStatus } from '../../parts/FoundStatus.tsx';
import { ListPage } from '../../parts/ListPage.tsx';
import { ListTools } from '../../parts/ListTools.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { ShowMore } from '../../parts/ShowMore.tsx';
import { type Shelf, useShelvedList } from '../useShelvedList.ts';

/** What to do first. */
const first = (
  <p>
    A report tells whoever pays what was tried, what was found and what was used. You write the words; every
    figure is filled from the records when it is set, and what nobody recorded is listed.
  </p>
);

/** Reports, newest first. */
export default function ReportList() {
  const { pages, items, narrowed, nothingYet, ...list } = useShelvedList({
    key: reportsKey,
    read: (asked, after, signal) => listReports(asked, after, signal),
    itemsOf: (page) => page.reports,
  });
  const settled = pages.isSuccess && !pages.isPlaceholderData;
  return (
    <ListPage
      stamp="Papers"
      headline="Reports"
      act={{ href: '/reports/new', words: 'Begin a report' }}
      failed={pages.error}
      empty={nothingYet}
      emptyTitle="No report is begun yet"
      emptyWords={first}
    >
      {!nothingYet && (
        <ListTools label="Search titles and words" typed={list.typed} onType={list.setTyped}>
          <Picks<Shelf>
            label="Which reports"
            shownLabel={false}
            value={list.archived}
            options={[
              ['no', 'In use'],
              ['yes', 'Put by'],
            ]}
            onPick={list.setArchived}
          />
        </ListTools>
      )}
      <FoundStatus found={settled && narrowed ? items.length : null} />
      {items.length > 0 && (
        <ul className="entry-lines" aria-label="Reports">
          {items.map((report) => (
            <ReportLine key={report.id} report={report} />
          ))}
        </ul>
      )}
      {settled && narrowed && items.length === 0 && (
        <p className="list-foot">No report is found so. Ask for fewer words.</p>
      )}
      {pages.hasNextPage && (
        <p className="list-foot">
          <ShowMore pages={pages}>Show older reports</ShowMore>
        </p>
      )}
    </ListPage>
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
