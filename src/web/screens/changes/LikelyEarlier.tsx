import { useQuery } from '@tanstack/react-query';
import type { WorkSummary } from '../../../records/workEntry.ts';
import type { ComparedSide } from '../../client/changes.ts';
import { listRuns, runsKey } from '../../client/runs.ts';
import { Button } from '../../parts/Button.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { say } from '../../words/say.ts';

/**
 * The first thing to do where nothing is picked yet: offers what most likely is wanted as the earlier side, the run before of the
 * same work, else another work of the same stone, else the one that was changed last.
 */
export function LikelyEarlier({
  later,
  workId,
  works,
  onPick,
}: {
  later: ComparedSide;
  workId: string;
  works: readonly WorkSummary[];
  onPick: (side: ComparedSide) => void;
}) {
  const runs = useQuery({ queryKey: runsKey(workId), queryFn: () => listRuns(workId) });
  if (!runs.data) return null;
  // newest first, and a work counts by its newest
  const own = later.kind === 'runs' ? runs.data.findIndex(({ id }) => id === later.id) : 0;
  const before = runs.data[own + 1];
  if (before)
    return (
      <Button kind="act" onClick={() => onPick({ kind: 'runs', id: before.id })}>
        {say('Compare with its run before, begun {day}', { day: dayWords(before.startedAt) })}
      </Button>
    );
  const stoneId = works.find(({ id }) => id === workId)?.stoneId;
  const others = works.filter(({ id }) => id !== workId);
  const likely = others.find((work) => work.stoneId === stoneId) ?? others[0];
  if (!likely) return null;
  return (
    <Button kind="act" onClick={() => onPick({ kind: 'works', id: likely.id })}>
      {say('Compare with {title}, on {stoneName}', { title: likely.title, stoneName: likely.stoneName })}
    </Button>
  );
}
