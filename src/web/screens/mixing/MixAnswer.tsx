import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { MixtureFigure, MixtureQuestion } from '../../../records/mixture.ts';
import { askMixture } from '../../client/mixtures.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { amountWords } from '../../parts/amountWords.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';

/** The answer to a mixing question: figures large, then how, from what source, and what to mind. */
export function MixAnswer({
  question,
  mixed,
}: {
  question: MixtureQuestion | null;
  /** Whether something is mixed that can be logged. */
  mixed: boolean;
}) {
  const answer = useQuery({
    queryKey: ['mixture', question],
    queryFn: ({ signal }) => askMixture(question!, signal),
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
      {!failed && !shown && <p className="soft">The answer stands here as soon as all amounts are typed.</p>}
      {shown && (
        <>
          <dl className="ask-figures">
            {shown.figures.map((figure) => (
              <AnswerFigure key={`${figure.name} ${figure.unit}`} figure={figure} />
            ))}
          </dl>
          {shown.figures.every(({ low }) => low === null) && (
            <p className="soft">No ± of its own: as exact as what was typed.</p>
          )}
          {shown.cautions.map((caution) => (
            <Notice
              key={caution}
              kind={/acid INTO/.test(caution) ? 'danger' : 'caution'}
              title={/acid INTO/.test(caution) ? 'Danger:' : 'Mind:'}
            >
              {caution}
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
          {mixed && (
            <p>
              <ButtonLink href="/batches/new">Log what you mixed</ButtonLink>
            </p>
          )}
        </>
      )}
    </section>
  );
}

function AnswerFigure({ figure: { name, value, unit, low, high } }: { figure: MixtureFigure }) {
  const words = amountWords(value, low, high);
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <span className="big">{words.value}</span>{' '}
        {unit !== '1' && unit !== name && (
          <span className="ask-unit">{unit === '1/ml' ? 'to 1 ml' : unit}</span>
        )}
        <span className="soft ask-doubt">{words.interval}</span>
      </dd>
    </div>
  );
}
