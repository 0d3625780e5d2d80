import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { ComparisonEntry } from '../../../records/comparisonEntry.ts';
import { listRuns, openRun, runKey, runsKey } from '../../client/runs.ts';
import { comparisonsOfStone, type JudgedBeside } from '../../client/suspects.ts';
import { listWorks, worksKey } from '../../client/workList.ts';
import { Choice } from '../../parts/Choice.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { say } from '../../words/say.ts';

/** So many works are offered, those changed last. */
const offeredWorks = 200;

/** What a comparison is judged beside: an earlier one of the same stone, which tells what grows, and a run's log. */
export function JudgedBesideFields({
  entry,
  beside,
  onBeside,
}: {
  entry: ComparisonEntry;
  beside: JudgedBeside;
  onBeside: (beside: JudgedBeside) => void;
}) {
  const others = useQuery({
    queryKey: ['of-its-stone', entry.id],
    queryFn: () => comparisonsOfStone(entry.id),
  });
  const works = useQuery({
    queryKey: [...worksKey, 'offered'],
    queryFn: () => listWorks({ search: '', putBy: 'no', stage: null }, null, undefined, offeredWorks),
  });
  const known = useQuery({
    queryKey: runKey(beside.run),
    queryFn: () => openRun(beside.run),
    enabled: beside.run !== '',
  });
  const [picked, setPicked] = useState('');
  const work = known.data?.workId ?? picked;
  const runs = useQuery({
    queryKey: runsKey(work),
    queryFn: () => listRuns(work),
    enabled: work !== '',
  });
  const offered = works.data?.works ?? [];
  const pickWork = async (id: string) => {
    setPicked(id);
    const [newest] = id === '' ? [] : await listRuns(id);
    onBeside({ ...beside, run: newest?.id ?? '' });
  };
  return (
    <div className="judged-beside">
      {others.data && others.data.length > 0 ? (
        <Choice
          label={say('An earlier pull from this stone')}
          hint={say('It tells what grows and what stays from pull to pull.')}
          value={beside.earlier}
          options={[
            ['', say('none')],
            ...others.data.map(
              ({ id, title, createdAt }) => [id, `${title}, ${dayWords(createdAt)}`] as const,
            ),
          ]}
          onChoose={(earlier) => onBeside({ ...beside, earlier })}
        />
      ) : (
        <p className="soft">
          {say(
            'Of this photograph of the stone there is no other comparison yet: what grows from pull to pull is not known.',
          )}
        </p>
      )}
      {offered.length > 0 && (
        <Choice
          label={say('Whose log is taken in')}
          hint={say('A step that was skipped or took too long speaks for some suspects.')}
          value={work}
          options={[
            ['', say('none')],
            ...offered.map(
              ({ id, title, stoneName }) =>
                [id, say('{title}, on {stoneName}', { title, stoneName })] as const,
            ),
          ]}
          onChoose={(id) => void pickWork(id)}
        />
      )}
      {work !== '' && runs.data?.length === 0 && <p className="soft">{say('No run of it was logged.')}</p>}
      {runs.data && runs.data.length > 1 && (
        <Choice
          label={say('Which of its runs')}
          value={beside.run}
          options={runs.data.map(
            ({ id, startedAt }) => [id, say('begun {day}', { day: dayWords(startedAt) })] as const,
          )}
          onChoose={(run) => onBeside({ ...beside, run })}
        />
      )}
    </div>
  );
}
