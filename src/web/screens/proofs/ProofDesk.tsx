import { Link } from 'wouter';
import { answerWarnings, seriesHeadline } from '../../managers/proofs/pullWords.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { GrainedAway } from '../../parts/GrainedAway.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { UnsentPulls } from '../held/UnsentPulls.tsx';
import { ApprovalLines } from './ApprovalLines.tsx';
import { DeskFold } from './DeskFold.tsx';
import { LaidAside } from './LaidAside.tsx';
import { NoiseLine, noiseWords } from './NoiseLine.tsx';
import { ProofsStamp } from './ProofsStamp.tsx';
import { PullsLaidOut } from './PullsLaidOut.tsx';
import { SinceLast } from './SinceLast.tsx';
import { SuspectLines } from './SuspectLines.tsx';
import { stonePicture } from './stonePhotograph.ts';
import { ToneLines } from './ToneLines.tsx';
import type { ProofsPageParts } from './useProofs.ts';
import { useUnsentPulls } from './useUnsentPulls.ts';
import { WordList } from './WordList.tsx';

/** The proof desk: the pulls, their three tones, whether they have settled, and what to do about it, all in one view. */
export function ProofDesk({ work, proofs }: ProofsPageParts) {
  const { series, pulls } = proofs;
  const at = `/works/${work.id}/proofs`;
  const latest = pulls.at(-1);
  if (!latest) return <FirstPull work={work} proofs={proofs} />;
  const { answer, readAgain } = series;
  const gone = work.stage === 'regrained';
  const measured = pulls.some(({ photographs }) => photographs.some(({ measuring }) => measuring?.tones));
  const again = readAgain && pulls.find(({ number }) => number === readAgain.pull);
  return (
    <div className="proof-desk">
      <PageHead stamp={<ProofsStamp work={work} />} headline={seriesHeadline(series)}>
        <ButtonLink kind={gone ? 'plain' : 'act'} href={`${at}/new`}>
          {gone ? say('Enter a pull from before') : say('Enter a pull')}
        </ButtonLink>
      </PageHead>
      <PullsLaidOut work={work} proofs={proofs} />
      <div className="proof-lines">
        <ToneLines series={series} />
        <ApprovalLines work={work} proofs={proofs} />
      </div>
      <div className="proof-words">
        <GrainedAway work={work} />
        <LaidAside work={work} />
        <section aria-label={say('The answer')}>
          {answer.steady === true && (
            <p>
              <b>{say('The pulls no longer change by more than is accepted here.')}</b>
            </p>
          )}
          <p className="proof-reason">{told(answer.reason)}</p>
          <ToMind words={[...answerWarnings(series), ...noiseWords(series)]} open={!measured} />
          {again && (
            <p>
              {told(readAgain.why)} <Link href={`${at}/${again.id}/again`}>{say('Photograph it again')}</Link>
            </p>
          )}
          <NoiseLine work={work} series={series} />
        </section>
        {measured && <SuspectLines work={work.id} />}
        <SinceLast work={work} pull={latest} folded={measured} />
      </div>
    </div>
  );
}

/** What to mind about the answer: more than one sentence is folded where the suspects need the room. */
function ToMind({ words, open }: { words: readonly string[]; open: boolean }) {
  if (words.length < 2) return <WordList words={words} />;
  return (
    <DeskFold title={say('{count} things to mind about it', { count: words.length })} open={open}>
      <WordList words={words} />
    </DeskFold>
  );
}

/** The desk before there is anything on it: what to do first, in order. */
function FirstPull({ work, proofs }: ProofsPageParts) {
  const { unsent } = useUnsentPulls(work.id);
  const seen = stonePicture(work, 'drawn') !== null;
  const areas = Object.values(proofs.settings.areas).some(({ polygonsMm }) => polygonsMm.length > 0);
  const at = `/works/${work.id}/proofs`;
  return (
    <>
      <PageHead
        stamp={<ProofsStamp work={work} />}
        headline={
          unsent.length > 0
            ? say('No pull is sent yet, {count, plural, one {one waits here} other {# wait here}}', {
                count: unsent.length,
              })
            : say('No pull has been entered yet')
        }
      />
      {unsent.length > 0 && (
        <div className="list-foot">
          <UnsentPulls work={work.id} />
        </div>
      )}
      <EmptyPage
        title={seen && areas ? say('Photograph the first pull') : say('First the stone, then the pulls')}
        act={
          <p>
            <ButtonLink kind="act" href={`${at}/new`}>
              {say('Enter a pull')}
            </ButtonLink>
          </p>
        }
      >
        <LaidAside work={work} />
        <p>
          {say(
            'Each pull is photographed and read here; from the fourth one on, this page says whether the print is steady or still growing.',
          )}
        </p>
        {!seen && (
          <p>
            {sayRich(
              'A print is laid on its drawn stone, and that has no photograph with its four marks yet: <link>photograph the stone</link>. Until then tones can be told by eye.',
              { link: (words) => <Link href={`/works/${work.id}/photographs`}>{words}</Link> },
            )}
          </p>
        )}
        {!areas && (
          <p>
            {sayRich(
              'No zone stands for lights, middles or darks yet: <link>draw the zones</link>, then <link2>choose among them</link2>.',
              {
                link: (words) => <Link href={`/works/${work.id}`}>{words}</Link>,
                link2: (words) => <Link href={`${at}/settings`}>{words}</Link>,
              },
            )}
          </p>
        )}
      </EmptyPage>
    </>
  );
}
