import { useQuery } from '@tanstack/react-query';
import type { WorkSummary } from '../../../records/workEntry.ts';
import type { ComparedSide } from '../../client/changes.ts';
import { listRuns, runsKey } from '../../client/runs.ts';
import { Choice } from '../../parts/Choice.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { say } from '../../words/say.ts';

/** Picks one side of a comparison: a work, and which of its runs where it has several. */
export function SidePicker({
  label,
  side,
  workId,
  works,
  onPick,
}: {
  label: string;
  side: ComparedSide | null;
  workId: string | null;
  works: readonly WorkSummary[];
  onPick: (side: ComparedSide) => void;
}) {
  const runs = useQuery({
    queryKey: runsKey(workId ?? ''),
    queryFn: () => listRuns(workId!),
    enabled: workId !== null,
  });
  const offered = works.map(
    ({ id, title, stoneName }) => [id, say('{title}, on {stoneName}', { title, stoneName })] as const,
  );
  const missing = workId !== null && !offered.some(([id]) => id === workId);
  const options = [
    ...(workId === null ? [['', say('pick a work')] as const] : []),
    ...(missing ? [[workId, say('an older work')] as const] : []),
    ...offered,
  ];
  const [newest] = runs.data ?? [];
  return (
    <div className="changes-side">
      <Choice
        label={label}
        value={workId ?? ''}
        options={options}
        onChoose={(id) => id !== '' && onPick({ kind: 'works', id })}
      />
      {runs.data && runs.data.length > 1 && (
        <Choice
          label={say('Which of its runs')}
          value={side?.kind === 'runs' ? side.id : newest!.id}
          options={runs.data.map(({ id, startedAt }) => [
            id,
            say('begun {day}', { day: dayWords(startedAt) }),
          ])}
          onChoose={(id) => onPick({ kind: 'runs', id })}
        />
      )}
      {runs.data && runs.data.length === 1 && (
        <p className="soft">{say('By its one run, begun {day}.', { day: dayWords(newest!.startedAt) })}</p>
      )}
      {runs.data && runs.data.length === 0 && (
        <p className="soft">{say('No run was logged: only its stone and drawing can be compared.')}</p>
      )}
    </div>
  );
}
