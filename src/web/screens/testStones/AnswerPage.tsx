import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { TestStoneAnswer, TreatmentHold } from '../../../records/testStoneAnswer.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import {
  answerSheetAddress,
  readTestStone,
  readTestStoneAnswer,
  testStoneAnswerKey,
  testStoneReadingKey,
} from '../../client/testStones.ts';
import { workId } from '../../client/waitedWork.ts';
import { Button, ButtonFile, ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { PatchPicture } from '../../parts/PatchPicture.tsx';
import { WaitedWork } from '../../parts/WaitedWork.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { AnswerPlots } from './AnswerPlots.tsx';
import { PrintPicture, shownFinding } from './FindingPicture.tsx';
import { PushedTable } from './PushedTable.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';

const verdictWords: Record<TreatmentHold['verdict'], string> = {
  holds: say('holds'),
  'holds-here': say('holds on this stone'),
  fails: say('does not hold'),
  'fails-here': say('does not hold on this stone'),
  open: say('not sure yet'),
};

/** What a test stone answers: the stone as a picture, plain words, one table, plain questions to the readings, what is still open. */
export function AnswerPage({ stone }: TestStonePageParts) {
  const reading = useQuery({
    queryKey: testStoneReadingKey(stone.id),
    queryFn: () => readTestStone(stone.id),
  });
  const queries = useQueryClient();
  const [work] = useState(workId);
  const [stopped, setStopped] = useState(false);
  const asked = useQuery({
    queryKey: testStoneAnswerKey(stone.id),
    queryFn: ({ signal }) => readTestStoneAnswer(stone.id, work, signal),
    enabled: !stopped,
  });
  const stop = () => {
    setStopped(true);
    void queries.cancelQueries({ queryKey: testStoneAnswerKey(stone.id) });
  };
  if (asked.error)
    return (
      <div className="list-foot">
        <FailureNotice failure={shownFailure(asked.error)} />
      </div>
    );
  if (stopped && !asked.data)
    return (
      <>
        <PageHead stamp={stone.name} headline={say('No answer yet')} />
        <EmptyPage
          title={say('The answer was not worked out')}
          act={
            <Button kind="act" onClick={() => setStopped(false)}>
              {say('Work it out')}
            </Button>
          }
        >
          <p>{say('You ended it on the way. Nothing is lost: the findings stand as they were read.')}</p>
        </EmptyPage>
      </>
    );
  if (!asked.data || !reading.data)
    return (
      <div className="list-foot">
        <WaitedWork id={work} words={say('The answer is being worked out.')} onStop={stop} />
      </div>
    );
  const { findings, judgedBy } = reading.data;
  if (findings.length === 0)
    return (
      <>
        <PageHead stamp={stone.name} headline={say('No answer yet')} />
        <EmptyPage
          title={say('The stone must be read first')}
          act={
            <ButtonLink kind="act" href={`/test-stones/${stone.id}/photographs`}>
              {say('To the photographs')}
            </ButtonLink>
          }
        >
          <p>{say('An answer rests on what became of every patch on a print.')}</p>
        </EmptyPage>
      </>
    );
  const answer = asked.data;
  return (
    <>
      <PageHead stamp={say('What {stone} answers', { stone: stone.name })} headline={headlineOf(answer)}>
        <ButtonFile kind="act" href={answerSheetAddress(stone.id)}>
          {say('Print the answer')}
        </ButtonFile>
      </PageHead>
      <div className="test-stone-two">
        <PatchPicture
          label={say('What became of each patch')}
          sizeMm={stone.sizeMm}
          patches={findings.map(shownFinding)}
          picked={new Set()}
          onPick={null}
          picture={<PrintPicture stone={stone} print={judgedBy} />}
        />
        <div className="answer-words">
          {answer.words.map((words) => (
            <p key={words}>{told(words)}</p>
          ))}
        </div>
      </div>
      <Audit answer={answer} />
      <HoldTable answer={answer} />
      <AnswerPlots answer={answer} />
      {answer.openQuestions.length > 0 && (
        <section className="answer-section" aria-labelledby="open-questions">
          <h2 id="open-questions" className="big">
            {say('Still open')}
          </h2>
          <ul>
            {answer.openQuestions.map(({ question, test }) => (
              <li key={question}>
                <b>{questionWords(question)}</b> {told(test)}
              </li>
            ))}
          </ul>
        </section>
      )}
      {answer.warnings.length > 0 && (
        <section className="answer-section" aria-label={say('Warnings')}>
          {answer.warnings.map((words) => (
            <Notice key={words} kind="caution" title="">
              {told(words)}
            </Notice>
          ))}
        </section>
      )}
    </>
  );
}

function headlineOf({ holds, audit, contrasts }: TestStoneAnswer): string {
  const sure = holds.filter(({ verdict }) => verdict !== 'open').length;
  if (sure > 0)
    return say('Of {sure} of {count} it can be told whether they hold', { sure, count: holds.length });
  const toned = contrasts.filter(({ low, high }) => low > 0 || high < 0).length;
  if (toned === 1) return say('One difference of tone is sure; what holds is not yet');
  if (toned > 1) return say('{toned} differences of tone are sure; what holds is not yet', { toned });
  return audit.some(({ weight }) => weight === 'no-cause')
    ? say('No cause can be assigned yet')
    : say('Nothing is certain yet');
}

/** A question that is a finding without its full stop is told as that finding; whole sentences as they are. */
function questionWords(question: string): string {
  if (/[.?]$/.test(question)) return told(question);
  const finding = `${question}.`;
  const words = told(finding);
  const said = words === finding ? told(question) : words;
  return /[.?!]$/.test(said) ? said : `${said}.`;
}

function Audit({ answer: { audit } }: { answer: TestStoneAnswer }) {
  if (audit.length === 0) return null;
  return (
    <section className="answer-section" aria-labelledby="audit">
      <h2 id="audit" className="big">
        {say('What this stone can’t tell')}
      </h2>
      <ul>
        {audit.map(({ code, message, test, weight, factors }) => (
          <li key={`${code} ${factors.join(' ')} ${message}`}>
            {weight === 'no-cause' && <b>{say('No cause can be assigned.')} </b>}
            {told(message)} {test && <span className="soft">{told(test)}</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}

function HoldTable({ answer: { holds, factors } }: { answer: TestStoneAnswer }) {
  if (holds.length === 0) return null;
  return (
    <>
      <h2 className="big answer-section">{say('What each got, and how it held')}</h2>
      <PushedTable label={say('What each got and how it held, a table to be pushed sideways')}>
        <caption className="unseen">{say('How each held, by what it got')}</caption>
        <thead>
          <tr>
            {factors.map(({ name }) => (
              <th key={name} scope="col">
                {told(name)}
              </th>
            ))}
            <th scope="col">{say('Held')}</th>
            <th scope="col">{say('Weak')}</th>
            <th scope="col">{say('Lost')}</th>
            <th scope="col">{say('Filled')}</th>
            <th scope="col">{say('Share that holds, 19 times of 20')}</th>
            <th scope="col">{say('So')}</th>
          </tr>
        </thead>
        <tbody>
          {holds.map((each) => (
            <tr key={each.name}>
              {factors.map(({ name }) => (
                <td key={name}>{told(each.treatment[name] ?? 'not known')}</td>
              ))}
              <td>{each.counts.held}</td>
              <td>{each.counts.weak}</td>
              <td>{each.counts.lost}</td>
              <td>{each.counts.filled}</td>
              <td>{shareWords(each)}</td>
              <td>{verdictWords[each.verdict]}</td>
            </tr>
          ))}
        </tbody>
      </PushedTable>
    </>
  );
}

function shareWords({ share }: TreatmentHold): string {
  if (share === null) return say('not read');
  const percent = (value: number) => Math.round(value * 100);
  return say(
    '{low} to {high} %, from {units} {unit, select, stone {{units, plural, one {stone} other {stones}}} strip {{units, plural, one {strip} other {strips}}} square {{units, plural, one {square} other {squares}}} other {{units, plural, one {patch} other {patches}}}}',
    { low: percent(share.low), high: percent(share.high), units: share.units, unit: share.unit },
  );
}
