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
import { AnswerPlots } from './AnswerPlots.tsx';
import { PrintPicture, shownFinding } from './FindingPicture.tsx';
import { PushedTable } from './PushedTable.tsx';
import type { TestStonePageParts } from './testStonePageParts.ts';

const verdictWords: Record<TreatmentHold['verdict'], string> = {
  holds: 'holds',
  'holds-here': 'holds on this stone',
  fails: 'does not hold',
  'fails-here': 'does not hold on this stone',
  open: 'open',
};

/** What a test stone answers: the stone as a picture, plain words, one table, three plots, what is still open. */
export function AnswerPage({ stone }: TestStonePageParts) {
  const reading = useQuery({
    queryKey: testStoneReadingKey(stone.id),
    queryFn: () => readTestStone(stone.id),
  });
  const queries = useQueryClient();
  const [work] = useState(workId);
  const [cancelled, setCancelled] = useState(false);
  const asked = useQuery({
    queryKey: testStoneAnswerKey(stone.id),
    queryFn: ({ signal }) => readTestStoneAnswer(stone.id, work, signal),
    enabled: !cancelled,
  });
  const cancel = () => {
    setCancelled(true);
    void queries.cancelQueries({ queryKey: testStoneAnswerKey(stone.id) });
  };
  if (asked.error)
    return (
      <div className="list-foot">
        <FailureNotice failure={shownFailure(asked.error)} />
      </div>
    );
  if (cancelled && !asked.data)
    return (
      <>
        <PageHead stamp={stone.name} headline="No answer yet" />
        <EmptyPage
          title="The answer was not worked out"
          act={
            <Button kind="act" onClick={() => setCancelled(false)}>
              Work it out
            </Button>
          }
        >
          <p>You ended it on the way. Nothing is lost: the findings stand as they were read.</p>
        </EmptyPage>
      </>
    );
  if (!asked.data || !reading.data)
    return (
      <div className="list-foot">
        <WaitedWork id={work} words="The answer is being worked out." onCancel={cancel} />
      </div>
    );
  const { findings, judgedBy } = reading.data;
  if (findings.length === 0)
    return (
      <>
        <PageHead stamp={stone.name} headline="No answer yet" />
        <EmptyPage
          title="The stone must be read first"
          act={
            <ButtonLink kind="act" href={`/test-stones/${stone.id}/photographs`}>
              To the photographs
            </ButtonLink>
          }
        >
          <p>An answer rests on what became of every patch on a print.</p>
        </EmptyPage>
      </>
    );
  const answer = asked.data;
  return (
    <>
      <PageHead stamp={`What ${stone.name} answers`} headline={headlineOf(answer)}>
        <ButtonFile kind="act" href={answerSheetAddress(stone.id)}>
          Print the answer
        </ButtonFile>
      </PageHead>
      <div className="test-stone-two">
        <PatchPicture
          label="What became of each patch"
          sizeMm={stone.sizeMm}
          patches={findings.map(shownFinding)}
          picked={new Set()}
          onPick={null}
          picture={<PrintPicture stone={stone} print={judgedBy} />}
        />
        <div className="answer-words">
          {answer.words.map((words) => (
            <p key={words}>{words}</p>
          ))}
        </div>
      </div>
      <Audit answer={answer} />
      <HoldTable answer={answer} />
      <AnswerPlots answer={answer} />
      {answer.openQuestions.length > 0 && (
        <section className="answer-section" aria-labelledby="open-questions">
          <h2 id="open-questions" className="big">
            Still open
          </h2>
          <ul>
            {answer.openQuestions.map(({ question, test }) => (
              <li key={question}>
                <b>{question}</b> {test}
              </li>
            ))}
          </ul>
        </section>
      )}
      {answer.warnings.length > 0 && (
        <section className="answer-section" aria-label="Warnings">
          {answer.warnings.map((words) => (
            <Notice key={words} kind="caution" title="">
              {words}
            </Notice>
          ))}
        </section>
      )}
    </>
  );
}

function headlineOf({ holds, audit, contrasts }: TestStoneAnswer): string {
  const told = holds.filter(({ verdict }) => verdict !== 'open').length;
  if (told > 0) return `${told} of ${holds.length} treatments can be told`;
  const toned = contrasts.filter(({ low, high }) => low > 0 || high < 0).length;
  if (toned === 1) return 'One difference of tone is sure; what holds is open';
  if (toned > 1) return `${toned} differences of tone are sure; what holds is open`;
  return audit.some(({ weight }) => weight === 'no-cause')
    ? 'No cause can be assigned yet'
    : 'Nothing is certain yet';
}

function Audit({ answer: { audit } }: { answer: TestStoneAnswer }) {
  if (audit.length === 0) return null;
  return (
    <section className="answer-section" aria-labelledby="audit">
      <h2 id="audit" className="big">
        What this stone can’t tell
      </h2>
      <ul>
        {audit.map(({ code, message, test, weight, factors }) => (
          <li key={`${code} ${factors.join(' ')} ${message}`}>
            {weight === 'no-cause' && <b>No cause can be assigned. </b>}
            {message} {test && <span className="soft">{test}</span>}
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
      <h2 className="big answer-section">Treatments</h2>
      <PushedTable label="Treatments, a table to be pushed sideways">
        <caption className="unseen">How each treatment held</caption>
        <thead>
          <tr>
            {factors.map(({ name }) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
            <th scope="col">Held</th>
            <th scope="col">Weak</th>
            <th scope="col">Lost</th>
            <th scope="col">Filled</th>
            <th scope="col">Share that holds, 95 %</th>
            <th scope="col">So</th>
          </tr>
        </thead>
        <tbody>
          {holds.map((each) => (
            <tr key={each.name}>
              {factors.map(({ name }) => (
                <td key={name}>{each.treatment[name] ?? 'not known'}</td>
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
  if (share === null) return 'not read';
  const percent = (value: number) => Math.round(value * 100);
  const units = share.units === 1 ? `1 ${share.unit}` : `${share.units} ${share.unit}s`;
  return `${percent(share.exactLow)} to ${percent(share.exactHigh)} %, from ${units}`;
}
