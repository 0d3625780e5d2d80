import type { RoomQuestion } from '../../../records/roomQuestion.ts';
import { askRoom } from '../../client/room.ts';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { AskAnswer, AskHow } from '../asking/AskAnswer.tsx';
import { roomFigures } from './roomFigures.ts';

/** The answer about a room or a lift: figures as ranges, then what they can't tell and who decides. */
export function RoomAnswerShown({ question }: { question: RoomQuestion | null }) {
  return (
    <AskAnswer name="room" question={question} ask={askRoom}>
      {(answer) => (
        <>
          <dl className="ask-figures">
            {roomFigures(answer).map(({ name, figure, words }) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>
                  <span className="big">{figure}</span>
                  <span className="soft ask-words">{told(words)}</span>
                </dd>
              </div>
            ))}
          </dl>
          {answer.words.map((words) => (
            <Notice key={words} kind="caution" title={say('Mind:')}>
              {words}
            </Notice>
          ))}
          <AskHow formula={answer.formula} source={answer.source} />
        </>
      )}
    </AskAnswer>
  );
}
