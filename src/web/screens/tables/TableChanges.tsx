import { Told } from '../../parts/Told.tsx';
import './TableChanges.css';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import {
  listTableIssues,
  type TableIssueMention,
  tableChangesBetween,
  tableKey,
} from '../../client/etchTables.ts';
import { dayText } from '../../managers/localMoment.ts';
import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';

const shownAtFirst = 5;

/** What changed from issue to issue, newest first, as sentences. */
export function TableChanges({ id, version }: { id: string; version: number }) {
  const [all, setAll] = useState(false);
  const issues = useQuery({
    queryKey: [...tableKey(id), 'issues', version],
    queryFn: () => listTableIssues(id),
  });
  const list = issues.data ?? [];
  if (list.length === 0) return null;
  const shown = all ? list : list.slice(0, shownAtFirst);
  return (
    <section className="table-changes" aria-labelledby="table-changes">
      <h2 id="table-changes" className="big">
        {say('What changed')}
      </h2>
      <ol>
        {shown.map((each) => (
          <IssueLine key={each.version} id={id} mention={each} />
        ))}
      </ol>
      {shown.length < list.length && (
        <Button onClick={() => setAll(true)}>
          {say('Show the {count} earlier issues', { count: list.length - shown.length })}
        </Button>
      )}
    </section>
  );
}

function IssueLine({ id, mention }: { id: string; mention: TableIssueMention }) {
  const { version, savedAt } = mention;
  const changes = useQuery({
    queryKey: [...tableKey(id), 'changes', version],
    queryFn: () => tableChangesBetween(id, version - 1, version),
    enabled: version > 1,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const sentences = changes.data?.sentences ?? [];
  return (
    <li>
      <p>
        <b>{say('Issue {issue}', { issue: version })}</b> <span className="soft">{dayText(savedAt)}</span>
      </p>
      <ul>
        {version === 1 && <li>{say('Copied as it was.')}</li>}
        {changes.isSuccess && sentences.length === 0 && <li>{say('Saved again without a change.')}</li>}
        {sentences.map((sentence) => (
          <li key={sentence}>
            <Told>{sentence}</Told>
          </li>
        ))}
      </ul>
    </li>
  );
}
