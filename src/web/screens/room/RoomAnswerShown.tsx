import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { RoomQuestion } from '../../../records/roomQuestion.ts';
import { askRoom } from '../../client/room.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { Notice } from '../../parts/Notice.tsx';
import { roomFigures } from './roomFigures.ts';

/** The answer about a room or a lift: figures as ranges, then what they can't tell and who decides. */
export function RoomAnswerShown({ question }: { question: RoomQuestion | null }) {
  const answer = useQuery({
    queryKey: ['room', question],
    queryFn: ({ signal }) => askRoom(question!, signal),
    enabled: question !== null,
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const failed = question !== null && answer.isError ? shownFailure(answer.error) : null;
  const shown = question !== null && failed === null ? answer.data : undefined;
  return (
    <section className="ask-answer" aria-label="Answer" aria-live="polite">
      {failed && (
        <Notice kind="caution" title={failed.message}>
          {failed.remedy}
        </Notice>
      )}
      {!failed && !shown && <p className="soft">The answer stands here as soon as all is typed.</p>}
      {shown && (
        <>
          <dl className="ask-figures">
            {roomFigures(shown).map(({ name, figure, words }) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>
                  <span className="big">{figure}</span>
                  <span className="soft ask-words">{words}</span>
                </dd>
              </div>
            ))}
          </dl>
          {shown.words.map((words) => (
            <Notice key={words} kind="caution" title="Mind:">
              {words}
            </Notice>
          ))}
          <dl className="ask-how">
            <div>
              <dt>How</dt>
              <dd>{shown.formula}</dd>
            </div>
            <div>
              <dt>Source</dt>
              <dd>{shown.source}</dd>
            </div>
          </dl>
        </>
      )}
    </section>
  );
}
