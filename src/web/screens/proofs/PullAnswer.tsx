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
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { useSaving } from '../useSaving.ts';
import { ProofsStamp } from './ProofsStamp.tsx';
import { type ProofsPageParts, useProofsChanged } from './useProofs.ts';
import { WordList } from './WordList.tsx';

/** A pull while it is read, and then the answer: the tones of this pull, and whether the series is steady. */
export function PullAnswer({ work, proofs, pull }: ProofsPageParts & { pull: PullEntry }) {
  const changed = useProofsChanged(work.id);
  const telling = useSaving<PullEntry>();
  const at = `/works/${work.id}/proofs`;
  const tell = async (act: 'measure' | 'stop') => {
    if (await telling.send(() => tellMeasuring(work.id, pull.id, act))) await changed();
  };
  const stamp = <ProofsStamp work={work} here={say('Pull {number}', { number: pull.number })} />;
  if (isBeingRead(pull)) {
    return (
      <div className="add-pull">
        <PageHead stamp={stamp} headline={say('Pull {number} is being read', { number: pull.number })} />
        <div className="add-pull-step">
          <ol className="pull-reading" aria-live="polite">
            {pull.photographs.map(({ photograph, measuring }, index) => (
              <li key={photograph}>
                {measuring?.state === 'measuring' && measuring.progress
                  ? sayRich('<b>Photograph {index}</b> {stageWords}, {fraction} %', {
                      b: (words) => <b>{words}</b>,
                      index: index + 1,
                      stageWords: stageWords[measuring.progress.stage],
                      fraction: Math.round(measuring.progress.fraction * 100),
                    })
                  : measuring?.state === 'measuring'
                    ? sayRich('<b>Photograph {index}</b> Being read', {
                        b: (words) => <b>{words}</b>,
                        index: index + 1,
                      })
                    : measuring?.state === 'waiting'
                      ? sayRich('<b>Photograph {index}</b> Waiting for its turn', {
                          b: (words) => <b>{words}</b>,
                          index: index + 1,
                        })
                      : sayRich('<b>Photograph {index}</b> Done', {
                          b: (words) => <b>{words}</b>,
                          index: index + 1,
                        })}
              </li>
            ))}
          </ol>
          <p className="soft">{say('You may leave this page; it goes on.')}</p>
          {telling.trouble && <FailureNotice failure={telling.trouble} />}
          <div className="add-pull-acts">
            <Button onClick={() => void tell('stop')} disabled={telling.pending}>
              {say('Stop the measurement')}
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
            ? say('Pull {number} was not read', { number: pull.number })
            : seriesHeadline(proofs.series)
        }
      />
      <div className="add-pull-step">
        {trouble && (
          <Notice kind="caution" title={trouble}>
            {pull.photographs.some(({ measuring }) => measuring?.tones?.verdict === 'unmirrored') &&
              say(
                'A print is the stone’s mirror image: was the photograph taken of the front, or turned over since?',
              )}
          </Notice>
        )}
        {read && read.how !== 'unread' && (
          <div className="pull-figures">
            {seriesTones.map((tone) => {
              const value = read.tones[tone];
              if (!value)
                return (
                  <Figure key={tone} value="–">
                    {say('{tone}: not known', { tone })}
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
        <p className="proof-reason">{told(answer.reason)}</p>
        <WordList words={answerWarnings(proofs.series)} />
        {readAgain?.pull === pull.number && <p>{told(readAgain.why)}</p>}
        {telling.trouble && <FailureNotice failure={telling.trouble} />}
        <div className="add-pull-acts">
          {byHand && (
            <ButtonLink kind="act" href={`${at}/${pull.id}/marks`}>
              {say('Set its corners by hand')}
            </ButtonLink>
          )}
          <ButtonLink kind={byHand ? 'plain' : 'act'} href={at}>
            {say('To the proofs')}
          </ButtonLink>
          {readAgain?.pull === pull.number && (
            <ButtonLink href={`${at}/${pull.id}/again`}>{say('Photograph it again')}</ButtonLink>
          )}
          {trouble && (
            <Button onClick={() => void tell('measure')} disabled={telling.pending}>
              {say('Measure it again')}
            </Button>
          )}
          <ButtonLink href={`${at}/new`}>{say('Enter the next pull')}</ButtonLink>
        </div>
      </div>
    </div>
  );
}
