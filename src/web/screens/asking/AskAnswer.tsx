import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { shownFailure } from '../../client/shownFailure.ts';
import { Notice } from '../../parts/Notice.tsx';
import { Told } from '../../parts/Told.tsx';
import { say } from '../../words/say.ts';

/** The place beside a question where its answer stands, asked for anew as soon as the question is another. */
export function AskAnswer<Question extends { readonly kind: string }, Answer>({
  name,
  question,
  ask,
  children,
}: {
  /** What is asked, as the server calls it. */
  name: string;
  /** null as long as something is missing or wrong. */
  question: Question | null;
  ask: (question: Question, signal: AbortSignal) => Promise<Answer>;
  children: (answer: Answer) => ReactNode;
}) {
  const answer = useQuery({
    queryKey: [name, question],
    queryFn: ({ signal }) => ask(question!, signal),
    enabled: question !== null,
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const failed = question !== null && answer.isError ? shownFailure(answer.error) : null;
  const shown = question !== null && failed === null ? answer.data : undefined;
  return (
    <section className="ask-answer" aria-label={say('Answer')} aria-live="polite">
      {failed && (
        <Notice kind="caution" title={failed.message}>
          {failed.remedy}
        </Notice>
      )}
      {!failed && shown === undefined && (
        <p className="soft">{say('The answer stands here as soon as all that is needed is typed.')}</p>
      )}
      {shown !== undefined && children(shown)}
    </section>
  );
}

/** How an answer was found, and from what source. */
export function AskHow({ formula, source }: { formula: string; source: string }) {
  return (
    <dl className="ask-how">
      <div>
        <dt>{say('How')}</dt>
        <dd>
          <Told>{formula}</Told>
        </dd>
      </div>
      <div>
        <dt>{say('Source')}</dt>
        <dd>
          <Told>{source}</Told>
        </dd>
      </div>
    </dl>
  );
}
