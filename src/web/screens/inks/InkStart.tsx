import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import { inkForWork, inksKey, lastGoodInk } from '../../client/inks.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { gramsRange, type InkTyped, inkFacts, typedOfAnswer, typedOfInk } from '../../managers/inkForm.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Figure } from '../../parts/Figure.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Told } from '../../parts/Told.tsx';
import { say } from '../../words/say.ts';

/** Where a mix may start from: the drawing of the work, and the last mix that printed well. */
export function InkStart({
  workId,
  onTake,
}: {
  workId: string | null;
  onTake: (typed: Partial<InkTyped>) => void;
}) {
  return (
    <div className="ink-start">
      {workId === null ? (
        <p>{say('Say below which work it is for, and its drawing says where to start from and how much.')}</p>
      ) : (
        <FromDrawing workId={workId} onTake={onTake} />
      )}
      <LastGood workId={workId} onTake={onTake} />
    </div>
  );
}

function FromDrawing({ workId, onTake }: { workId: string; onTake: (typed: Partial<InkTyped>) => void }) {
  const [pulls, setPulls] = useState({ proofs: 5, edition: 0 });
  const found = useQuery({
    queryKey: [...inksKey, 'for', workId, pulls.proofs, pulls.edition],
    queryFn: () => inkForWork(workId, pulls.proofs, pulls.edition),
    placeholderData: (before) => before,
  });
  if (found.error) return <FailureNotice failure={shownFailure(found.error)} />;
  const answer = found.data;
  if (!answer) return <p className="unseen">{say('Reckoning …')}</p>;
  return (
    <section aria-labelledby="from-drawing">
      <h2 id="from-drawing" className="big">
        {say('From the drawing')}
      </h2>
      {answer.parts && (
        <div className="ink-figures">
          <Figure value={`${answer.parts.soft}:${answer.parts.stiff}`}>
            {say('soft to stiff, by weight')}
          </Figure>
          {answer.proofsGrams && (
            <Figure value={gramsRange(answer.proofsGrams)}>{say('of ink for the proofs')}</Figure>
          )}
          {answer.editionGrams && (
            <Figure value={gramsRange(answer.editionGrams)}>{say('for the edition')}</Figure>
          )}
        </div>
      )}
      <p>
        <Told>{answer.why}</Told>
      </p>
      {answer.warnings.map((warning) => (
        <p key={warning} className="soft">
          <Told>{warning}</Told>
        </p>
      ))}
      <div className="fields">
        <NumberField
          label={say('Proofs')}
          value={pulls.proofs}
          least={0}
          most={1000}
          onValue={(proofs) => setPulls((now) => ({ ...now, proofs: Math.round(proofs ?? 0) }))}
        />
        <NumberField
          label={say('Sheets of the edition')}
          value={pulls.edition}
          least={0}
          most={1000}
          onValue={(edition) => setPulls((now) => ({ ...now, edition: Math.round(edition ?? 0) }))}
        />
      </div>
      {answer.parts && (
        <Button onClick={() => onTake(typedOfAnswer(answer))}>{say('Start from the drawing')}</Button>
      )}
    </section>
  );
}

/** What the last good mix was: for this work, else for any. */
function LastGood({ workId, onTake }: { workId: string | null; onTake: (typed: Partial<InkTyped>) => void }) {
  const good = useQuery({
    queryKey: [...inksKey, 'last good', workId],
    queryFn: async () => (workId && (await lastGoodInk(workId))) || lastGoodInk(null),
  });
  const ink = good.data;
  if (!good.isSuccess) return null;
  return (
    <section aria-labelledby="last-good">
      <h2 id="last-good" className="big">
        {say('The last that printed well')}
      </h2>
      {ink ? (
        <>
          <p>
            <Link href={`/inks/${ink.id}`}>{ink.name}</Link>
            {ink.workTitle && say(', for {workTitle}', { workTitle: ink.workTitle })}:{' '}
            {inkFacts(ink).join(', ')}.
          </p>
          <Button onClick={() => onTake(typedOfInk(ink))}>{say('Start from it')}</Button>
        </>
      ) : (
        <p className="soft">
          {say('None is known yet: once a mix has printed, say on its page what the prints said.')}
        </p>
      )}
    </section>
  );
}
