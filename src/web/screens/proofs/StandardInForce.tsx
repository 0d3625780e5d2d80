import { valueWords } from '../../../paper/charts/toneValueWords.ts';
import { type SeriesTone, seriesTones } from '../../../records/proofSeries.ts';
import type { Approval } from '../../../records/workSeries.ts';
import { agreementWords, doubtSentence, pullsReadBy } from '../../../studio/proofs/goodToPrint.ts';
import { alikeDarknessWords, pullWords } from '../../../studio/proofs/seriesWords.ts';
import { eyeSigma } from '../../../studio/proofs/workSeries.ts';
import { workAspect } from '../../managers/proofs/workFrame.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { darknessText } from '../../words/darknesses.ts';
import { figureText } from '../../words/figures.ts';
import { listWords } from '../../words/listWords.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { toldText } from '../../words/toldText.ts';
import { PullPicture } from './PullPicture.tsx';
import type { ProofsPageParts } from './useProofs.ts';
import { WithdrawApproval } from './WithdrawApproval.tsx';
import { WordList } from './WordList.tsx';

/** The standard that holds: its tones, who gave it, and what rests on it. */
export function StandardInForce({ work, proofs, standard }: ProofsPageParts & { standard: Approval }) {
  const pull = proofs.pulls.find(({ id }) => id === standard.pullId);
  const read = seriesTones.flatMap((tone: SeriesTone) => {
    const value = standard.tones[tone];
    return value === null ? [] : [{ tone, value }];
  });
  const said = read.length === 0 ? [] : alikeDarknessWords(read.map(({ value }) => value));
  // as it was read then; an interval of another reading since would not be its own
  const reading = proofs.series.pulls.find(({ id }) => id === standard.pullId)?.tones;
  const tones = read.map(({ tone, value }, i) => {
    const now = reading?.[tone];
    const own = now && Math.abs(now.value - value) < 0.0005 && standard.photograph !== null;
    return `${told(tone)} ${figureText(own ? valueWords(now) : said[i]!)}`;
  });
  const unsure =
    standard.photograph === null ? doubtSentence(pullsReadBy('eye', eyeSigma), standard.tolerance) : null;
  return (
    <section aria-label={say('The standard')} className="approval-standard">
      {pull && <PullPicture pull={pull} aspect={workAspect(work)} longestPx={220} />}
      <div>
        <p>
          {say(
            'It is the standard: {list}, {standard}. It rests on {pull}. The artist accepts prints that differ from it by {darkness}.',
            {
              list: tones.length > 0 ? listWords(tones) : say('no tone was read'),
              standard: standardWords(standard),
              pull: told(pullWords(standard.restsOn)),
              darkness: darknessText(standard.tolerance),
            },
          )}
        </p>
        {unsure && <p>{toldText(unsure)}</p>}
        <p>
          {sayRich('Artist <b>{artist}</b>, printer <b>{printer}</b>, {day}.', {
            b: (words) => <b>{words}</b>,
            artist: standard.artist,
            printer: standard.printer,
            day: dayWords(standard.givenAt),
          })}
        </p>
        {standard.restsOnIt.length > 0 ? (
          <WordList words={standard.restsOnIt} />
        ) : (
          <ButtonLink kind="act" href={`/works/${work.id}/edition`}>
            {say('Plan the edition')}
          </ButtonLink>
        )}
        <WithdrawApproval work={work} approval={standard} />
      </div>
    </section>
  );
}

/** How surely the standard's own tones are known. */
function standardWords({ photograph, tolerance }: Approval): string {
  return photograph === null
    ? say('each {agreement}', {
        agreement: toldText(agreementWords(pullsReadBy('eye', eyeSigma), tolerance)),
      })
    : say('read from its photograph');
}
