import type { MixtureFigure, MixtureQuestion } from '../../../records/mixture.ts';
import { askMixture } from '../../client/mixtures.ts';
import { amountWords } from '../../parts/amountWords.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { AskAnswer, AskHow } from '../asking/AskAnswer.tsx';

/** The answer to a mixing question: figures large, then how, from what source, and what to mind. */
export function MixAnswer({
  question,
  mixed,
}: {
  question: MixtureQuestion | null;
  /** Whether something is mixed that can be logged. */
  mixed: boolean;
}) {
  return (
    <AskAnswer name="mixture" question={question} ask={askMixture}>
      {({ figures, cautions, formula, source }) => (
        <>
          <dl className="ask-figures">
            {figures.map((figure) => (
              <AnswerFigure key={`${figure.name} ${figure.unit}`} figure={figure} />
            ))}
          </dl>
          {figures.every(({ low }) => low === null) && (
            <p className="soft">{say('No ± of its own: as exact as what was typed.')}</p>
          )}
          {cautions.map((caution) => (
            <Notice
              key={caution}
              kind={/acid INTO/.test(caution) ? 'danger' : 'caution'}
              title={/acid INTO/.test(caution) ? say('Danger:') : say('Mind:')}
            >
              {caution}
            </Notice>
          ))}
          <AskHow formula={formula} source={source} />
          {mixed && (
            <p>
              <ButtonLink href="/batches/new">{say('Log what you mixed')}</ButtonLink>
            </p>
          )}
        </>
      )}
    </AskAnswer>
  );
}

function AnswerFigure({ figure: { name, value, unit, low, high } }: { figure: MixtureFigure }) {
  const words = amountWords(value, low, high);
  return (
    <div>
      <dt>{told(name)}</dt>
      <dd>
        <span className="big">{words.value}</span>{' '}
        {unit !== '1' && unit !== name && (
          <span className="ask-unit">{unit === '1/ml' ? say('to 1 ml') : unit}</span>
        )}
        <span className="soft ask-doubt">{words.interval}</span>
      </dd>
    </div>
  );
}
