import './Measuring.css';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import { stopMeasuring } from '../client/comparisons.ts';
import { entryKey } from '../client/events.ts';
import { shownFailure } from '../client/shownFailure.ts';
import { Button } from '../parts/Button.tsx';
import { stages, stageWords, stateWords } from '../parts/entryWords.ts';
import { FailureNotice } from '../parts/FailureNotice.tsx';
import { Figure } from '../parts/Figure.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { say } from '../words/say.ts';
import { LayingDown } from './LayingDown.tsx';

/** A comparison that waits or is being measured: its stages in words, and the way to stop it. */
export function Measuring({ entry }: { entry: ComparisonEntry }) {
  const queries = useQueryClient();
  const stop = useMutation({
    mutationFn: () => stopMeasuring(entry.id),
    onSuccess: () => queries.invalidateQueries({ queryKey: entryKey(entry.id) }),
  });
  const { progress } = entry;
  const at = progress ? stages.indexOf(progress.stage) : -1;
  return (
    <>
      <PageHead
        stamp={entry.title}
        headline={entry.state === 'waiting' ? say('Waiting for its turn') : say('Being measured')}
      />
      <div className="measuring">
        <LayingDown entry={entry} />
        {progress && (
          <Figure value={String(Math.round(progress.fraction * 100))} beside="%">
            {say('of the whole')}
          </Figure>
        )}
        <ol>
          {stages.map((stage, index) => (
            <li
              key={stage}
              className={index < at ? 'done' : index === at ? 'now' : 'later'}
              aria-current={index === at ? 'step' : undefined}
            >
              <span className="measuring-sign" aria-hidden="true" />
              <span className="measuring-words">{stageWords[stage]}</span>
              <span className="soft">{index < at && say('done')}</span>
            </li>
          ))}
        </ol>
        <p className="unseen" role="status">
          {stateWords(entry)}
        </p>
        <p className="soft">
          {entry.state === 'waiting'
            ? say('Stonetone measures one pair at a time. You may leave this page; it goes on.')
            : say('You may leave this page; it goes on, and the finding will stand among the comparisons.')}
        </p>
        {stop.isError && <FailureNotice failure={shownFailure(stop.error)} />}
        <Button onClick={() => stop.mutate()} disabled={stop.isPending}>
          {stop.isPending ? say('Stopping …') : say('Stop the measurement')}
        </Button>
      </div>
    </>
  );
}
