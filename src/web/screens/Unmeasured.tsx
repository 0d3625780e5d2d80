import { told, toldOr } from '../words/told.ts';
import './Unmeasured.css';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import { startMeasuring } from '../client/comparisons.ts';
import { entryKey } from '../client/events.ts';
import { previewAddress } from '../client/photographs.ts';
import { shownFailure } from '../client/shownFailure.ts';
import { Button } from '../parts/Button.tsx';
import { stateWords } from '../parts/entryWords.ts';
import { FailureNotice } from '../parts/FailureNotice.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { say } from '../words/say.ts';
import { DeleteComparison } from './DeleteComparison.tsx';
import { DownloadList } from './DownloadList.tsx';
import { unmeasuredWords } from './unmeasuredWords.ts';
import { useSetUpAnew } from './useSetUpAnew.ts';

/** A comparison with nothing measured: refused, not done or stopped. Why, and what to do. */
export function Unmeasured({ entry }: { entry: ComparisonEntry }) {
  const queries = useQueryClient();
  const again = useMutation({
    mutationFn: () => startMeasuring(entry.id),
    onSuccess: () => queries.invalidateQueries({ queryKey: entryKey(entry.id) }),
  });
  const { setUpAnew, busy } = useSetUpAnew(entry);
  const { why, remedies, first } = unmeasuredWords(entry);
  const { stone, proof } = entry.request;
  return (
    <>
      <PageHead stamp={entry.title} headline={toldOr(entry.finding) ?? stateWords(entry)} />
      <div className="unmeasured">
        <div className="unmeasured-pictures">
          <figure>
            <img src={previewAddress(stone.photograph, 900)} alt={say('The stone as photographed')} />
            <figcaption>{say('The stone, as photographed')}</figcaption>
          </figure>
          <figure>
            <img src={previewAddress(proof.photograph, 900)} alt={say('The print as photographed')} />
            <figcaption>{say('The print, as photographed')}</figcaption>
          </figure>
        </div>
        <div className="unmeasured-words">
          {why && <p>{told(why)}</p>}
          {remedies.length > 0 && (
            <>
              <h2 className="big">{say('What to do')}</h2>
              <ol>
                {remedies.map((remedy) => (
                  <li key={remedy}>{told(remedy)}</li>
                ))}
              </ol>
            </>
          )}
          {again.isError && <FailureNotice failure={shownFailure(again.error)} />}
          <div className="unmeasured-acts">
            {first === 'anew' ? (
              <>
                <Button kind="act" onClick={setUpAnew} disabled={busy}>
                  {say('Set it up again')}
                </Button>
                <Button onClick={() => again.mutate()} disabled={again.isPending}>
                  {say('Measure once more as it is')}
                </Button>
              </>
            ) : (
              <>
                <Button kind="act" onClick={() => again.mutate()} disabled={again.isPending}>
                  {say('Measure again')}
                </Button>
                <Button onClick={setUpAnew} disabled={busy}>
                  {say('Change how it is set up')}
                </Button>
              </>
            )}
          </div>
          <DownloadList entry={entry} />
          {!entry.sample && <DeleteComparison id={entry.id} title={entry.title} />}
        </div>
      </div>
    </>
  );
}
