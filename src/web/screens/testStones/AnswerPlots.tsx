import {
  jawsPicture,
  pegsPicture,
  type ReadingPicture,
  readingPictureSize,
  slopePicture,
} from '../../../paper/charts/readingPictures.ts';
import type { TestStoneAnswer } from '../../../records/testStoneAnswer.ts';
import {
  edgeToEdge,
  farPatches,
  type ReadingQuestion,
  scatterByTone,
} from '../../../studio/trials/answer/readingQuestions.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { IntervalRows } from './IntervalRows.tsx';

/** The longest list that is still read. */
const mostRows = 24;

/** Shares that held, tones, and what readings say for themselves. */
export function AnswerPlots({
  answer: { levelHolds, tones, toneOf, residuals, position },
}: {
  answer: TestStoneAnswer;
}) {
  const held = levelHolds.flatMap(({ factor, name, share }) =>
    share === null
      ? []
      : [
          {
            label: `${told(factor)}: ${told(name)}`,
            value: share.value,
            low: share.low,
            high: share.high,
          },
        ],
  );
  const toned = tones.map(({ factor, level, value, low, high }) => ({
    label: `${told(factor)}: ${told(level)}`,
    value,
    low,
    high,
  }));
  return (
    <div className="answer-plots">
      <figure>
        <figcaption>{say('Share that held; the truth lies within the bar, 19 times of 20')}</figcaption>
        <IntervalRows rows={held.slice(0, mostRows)} from={0} to={1} mark={null} />
      </figure>
      <figure>
        <figcaption>
          {toneOf === 'change'
            ? say('Printed less drawn, by what each got; the truth lies within the bar, 19 times of 20')
            : say('Printed tone, by what each got; the truth lies within the bar, 19 times of 20')}
        </figcaption>
        {toned.length === 0 ? (
          <p className="soft">{say('No tone could be read.')}</p>
        ) : (
          <IntervalRows
            rows={toned.slice(0, mostRows)}
            from={toneOf === 'change' ? -0.6 : 0}
            to={toneOf === 'change' ? 0.6 : 1}
            mark={toneOf === 'change' ? 0 : null}
          />
        )}
      </figure>
      <Readings residuals={residuals} position={position} />
    </div>
  );
}

/** What a printer asks of readings before believing them: each a question, a plain picture, and what it says. */
function Readings({ residuals, position }: Pick<TestStoneAnswer, 'residuals' | 'position'>) {
  if (residuals.length === 0)
    return (
      <p className="soft">
        {say('Whether readings can be trusted is not known: too few were treated alike.')}
      </p>
    );
  const far = farPatches(residuals);
  const scatter = scatterByTone(residuals);
  return (
    <>
      <Asked {...far} picture={pegsPicture(residuals, far.far)} />
      <Asked {...scatter} picture={jawsPicture(scatter.thirds)} />
      <Asked {...edgeToEdge(position)} picture={slopePicture(position)} />
    </>
  );
}

function Asked({ question, answer, picture }: ReadingQuestion & { readonly picture: ReadingPicture }) {
  const { lines, heavy, words } = picture;
  return (
    <figure>
      <figcaption>{told(question)}</figcaption>
      <p>{told(answer)}</p>
      <svg viewBox={`0 0 ${readingPictureSize.join(' ')}`} className="answer-reading" aria-hidden="true">
        <path d={lines} />
        <path d={heavy} className="heavy" />
        {words.map(({ x, y, text }) => (
          <text key={text} x={x} y={y} textAnchor="middle">
            {told(text)}
          </text>
        ))}
      </svg>
    </figure>
  );
}
