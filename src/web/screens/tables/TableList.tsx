import { told } from '../../words/told.ts';
import './TableList.css';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { EtchTableSummary } from '../../../records/etchTableEntry.ts';
import { listTables, tablesKey } from '../../client/etchTables.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { dayText } from '../../managers/localMoment.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { CopyTable } from './CopyTable.tsx';
import { OwnMedia } from './OwnMedia.tsx';

/** The etch tables: those that everybody starts with, and the studio's own. */
export default function TableList() {
  const [copying, setCopying] = useState(false);
  const tables = useQuery({ queryKey: tablesKey, queryFn: listTables });
  const all = tables.data ?? [];
  const own = all.filter(({ starting }) => !starting);
  const starting = all.filter((table) => table.starting);
  return (
    <>
      <PageHead stamp={say('Etch tables')} headline={say('What each drawing is etched with, and how long')}>
        {!copying && all.length > 0 && (
          <Button kind="act" onClick={() => setCopying(true)}>
            {say('Make a table of our own')}
          </Button>
        )}
      </PageHead>
      <div className="tables-body">
        {tables.isError && <FailureNotice failure={shownFailure(tables.error)} />}
        {copying && <CopyTable tables={all} onLeave={() => setCopying(false)} />}
        {own.length > 0 && <Lines title={say('Our own')} tables={own} />}
        {starting.length > 0 && <Lines title={say('To start from')} tables={starting} />}
        {tables.isSuccess && own.length === 0 && !copying && (
          <p className="tables-lead">
            {say(
              'Handbooks contradict each other, and stones differ. Start from one of these, make a copy your own, and change it by what this room gets: every issue of it stays, with what changed in words.',
            )}
          </p>
        )}
        {tables.isSuccess && (
          <p>
            {sayRich('<link>What this room found of media and etches</link>, beside what the tables say.', {
              link: (words) => <Link href="/known">{words}</Link>,
            })}
          </p>
        )}
        {tables.isSuccess && <OwnMedia />}
      </div>
    </>
  );
}

function Lines({ title, tables }: { title: string; tables: readonly EtchTableSummary[] }) {
  return (
    <section aria-label={title}>
      <h2 className="stamp">{title}</h2>
      <ul className="table-lines">
        {tables.map(({ id, name, version, starting, savedAt }) => (
          <li key={id}>
            <Link href={`/tables/${id}`}>
              <span className="big">{told(name)}</span>
              <span className="soft">
                {starting
                  ? say('comes with Stonetone; copied, never changed')
                  : say('issue {issue}, saved {day}', { issue: version, day: dayText(savedAt) })}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
