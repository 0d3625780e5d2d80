import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { EtchTableIssue } from '../../../records/etchTableEntry.ts';
import { openTable, tableKey } from '../../client/etchTables.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { dayText } from '../../managers/localMoment.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { told } from '../../words/told.ts';
import { useReturnFocus } from '../useReturnFocus.ts';
import { CopyTable } from './CopyTable.tsx';
import { RowTable } from './RowTable.tsx';
import { TableChanges } from './TableChanges.tsx';
import { TableEditor } from './TableEditor.tsx';
import './TableList.css';
import { say } from '../../words/say.ts';

/** One etch table: its rules, what changed between its issues, and, where it is the studio's own, changing it. */
export default function TableScreen({ id }: { id: string }) {
  const table = useQuery({ queryKey: tableKey(id), queryFn: () => openTable(id) });
  if (table.data) return <TablePage kept={table.data} />;
  if (table.isPending) return <p className="unseen">{say('Opening the table …')}</p>;
  return (
    <>
      <PageHead stamp={say('Etch table')} headline={say('This table cannot be shown')} />
      <div className="tables-body">
        <FailureNotice failure={shownFailure(table.error)} />
        <p>
          <ButtonLink href="/tables">{say('To the tables')}</ButtonLink>
        </p>
      </div>
    </>
  );
}

function TablePage({ kept }: { kept: EtchTableIssue }) {
  const [doing, setDoing] = useState<'reading' | 'copying' | 'changing'>('reading');
  const opener = useReturnFocus(doing !== 'reading');
  const { table, starting, savedAt } = kept;
  const about = starting
    ? say('comes with Stonetone; copied, never changed')
    : say('our own, issue {issue}, saved {day}', { issue: table.version, day: dayText(savedAt) });
  return (
    <>
      <PageHead stamp={say('Etch table · {about}', { about })} headline={told(table.name)}>
        {doing === 'reading' && (
          <Button ref={opener} kind="act" onClick={() => setDoing(starting ? 'copying' : 'changing')}>
            {starting ? say('Copy it to make it ours') : say('Change the table')}
          </Button>
        )}
      </PageHead>
      <div className="tables-body">
        {doing === 'copying' && (
          <CopyTable tables={[{ id: table.id, name: table.name }]} onLeave={() => setDoing('reading')} />
        )}
        {doing === 'changing' ? (
          <TableEditor kept={kept} onLeave={() => setDoing('reading')} />
        ) : (
          <>
            <RowTable rows={table.rows} />
            {!starting && <TableChanges id={table.id} version={table.version} />}
            {!starting && (
              <p>
                <Button kind="quiet" onClick={() => setDoing('copying')}>
                  {say('Copy this table')}
                </Button>
              </p>
            )}
          </>
        )}
      </div>
    </>
  );
}
