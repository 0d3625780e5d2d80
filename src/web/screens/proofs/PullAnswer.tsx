import './AddPull.css';
import { valueParts } from '../../../paper/charts/toneValueWords.ts';
import { seriesTones } from '../../../records/proofSeries.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import { tellMeasuring } from '../../client/pulls.ts';
import {
  answerWarnings,
  isBeingRead,
  readingTrouble,
  seriesHeadline,
} from '../../managers/proofs/pullWords.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { stageWords } from '../../parts/entryWords.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Figure } from '../../parts/Figure.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { useSaving } from '../useSaving.ts';
import { ProofsStamp } from './ProofsStamp.tsx';
import { type ProofsPageParts, useProofsChanged } from './useProofs.ts';
import { WordList } from './WordList.tsx';

/** A pull while it is read, and then the answer: the tones of this pull, and whether the series is steady. */
export function PullAnswer({ work, proofs, pull }: ProofsPageParts & { pull: PullEntry }) {
  const changed = useProofsChanged(work.id);
  const telling = useSaving<PullEntry>();
  const at = `/works/${work.id}/proofs`;
  const tell = async (act: 'measure' | 'cancel') => {
    if (await telling.send(() => tellMeasuring(work.id, pull.id, act))) await changed();
  };
  const stamp = <ProofsStamp work={work} here={`Pull ${pull.number}`} />;
  if (isBeingRead(pull)) {
    return (
      <div className="add-pull">
        <PageHead stamp={stamp} headline={`Pull ${pull.number} is being read`} />
        <div className="add-pull-step">
          <ol className="pull-reading" aria-live="polite">
            {pull.photographs.map(({ photograph, measuring }, index) => (
              <li key={photograph}>
                <b>Photograph {index + 1}</b>{' '}
                {measuring?.state === 'measuring' && measuring.progress
                  ? `${stageWords[measuring.progress.stage]}, ${Math.round(measuring.progress.fraction * 100)} %`
                  : measuring?.state === 'measuring'
                    ? 'Being read'
                    : measuring?.state === 'waiting'
                      ? 'Waiting for its turn'
                      : 'Done'}
                <progress
                  max={1}
                  value={
                    measuring?.state === 'measuring'
                      ? (measuring.progress?.fraction ?? 0)
                      : measuring?.state === 'waiting'
                        ? 0
                        : 1
                  }
                  aria-label={`Photograph ${index + 1}`}
                />
              </li>
            ))}
          </ol>
          <p className="soft">You may leave this page; it goes on.</p>
          {telling.trouble && <FailureNotice failure={telling.trouble} />}
          <div className="add-pull-acts">
            <Button onClick={() => void tell('cancel')} disabled={telling.pending}>
              Cancel the measurement
            </Button>
          </div>
        </div>
      </div>
    );
  }
  const read = proofs.series.pulls.find(({ id }) => id === pull.id);
  const trouble = readingTrouble(pull);
  const { answer, readAgain } = proofs.series;
  // A print that was not found is laid by hand; one whose reading was stopped needs no hand.
  const byHand = pull.photographs.some(({ measuring }) => measuring?.state === 'refused');
  return (
    <div className="add-pull">
      <PageHead
        stamp={stamp}
        headline={
          trouble && read?.how === 'unread'
            ? `Pull ${pull.number} was not read`
            : seriesHeadline(proofs.series)
        }
      />
      <div className="add-pull-step">
        {trouble && (
          <Notice kind="caution" title={trouble}>
            {pull.photographs.some(({ measuring }) => measuring?.tones?.verdict === 'unmirrored') &&
              'A print is the stone’s mirror image: was the photograph taken of the front, or turned over since?'}
          </Notice>
        )}
        {read && read.how !== 'unread' && (
          <div className="pull-figures">
            {seriesTones.map((tone) => {
              const value = read.tones[tone];
              if (!value)
                return (
                  <Figure key={tone} value="–">
                    {tone}: not known
                  </Figure>
                );
              const { figure, arm } = valueParts(value);
              return (
                <Figure key={tone} value={figure} beside={`± ${arm}`}>
                  {tone}
                </Figure>
              );
            })}
          </div>
        )}
        <p className="proof-reason">{answer.reason}</p>
        <WordList words={answerWarnings(proofs.series)} />
        {readAgain?.pull === pull.number && <p>{readAgain.why}</p>}
        {telling.trouble && <FailureNotice failure={telling.trouble} />}
        <div className="add-pull-acts">
          {byHand && (
            <ButtonLink kind="act" href={`${at}/${pull.id}/marks`}>
              Set its corners by hand
            </ButtonLink>
          )}
          <ButtonLink kind={byHand ? 'plain' : 'act'} href={at}>
            To the proofs
          </ButtonLink>
          {readAgain?.pull === pull.number && (
            <ButtonLink href={`${at}/${pull.id}/again`}>Photograph it again</ButtonLink>
          )}
          {trouble && (
            <Button onClick={() => void tell('measure')} disabled={telling.pending}>
              Measure it again
            </Button>
          )}
          <ButtonLink href={`${at}/new`}>Add the next pull</ButtonLink>
        </div>
      </div>
    </div>
  );
}
