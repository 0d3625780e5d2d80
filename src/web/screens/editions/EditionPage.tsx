import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { Edition } from '../../../records/edition.ts';
import { openMatters } from '../../../studio/editions/openMatters.ts';
import { editionKey, editionsKey, readingsKey } from '../../client/editions.ts';
import { inPageWords } from '../../client/inPageWords.ts';
import { labelsPage } from '../../client/labels.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { ButtonFile, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { CountWords } from './CountWords.tsx';
import { EditionForm, signingId } from './EditionForm.tsx';
import { NoApproval } from './NoApproval.tsx';
import { PlanFigures, PlanParts } from './PlanParts.tsx';
import { PutEditionBy } from './PutEditionBy.tsx';
import { useEditionCount, useEditionPlan } from './useEditionCount.ts';
import { type Ledger, useLedger } from './useLedger.ts';

/** An edition: while it is printed, what it needs first; once it is numbered, its prints and papers first. */
export function EditionPage({ edition }: { edition: Edition }) {
  const queries = useQueryClient();
  const ledger = useLedger(edition.id);
  const [saved, setSaved] = useState(false);
  const plan = useEditionPlan(edition);
  const hold = (kept: Edition) => {
    queries.setQueryData(editionKey(kept.id), kept);
    void queries.invalidateQueries({ queryKey: editionsKey(kept.workId) });
  };
  const keep = (kept: Edition) => {
    hold(kept);
    void queries.invalidateQueries({ queryKey: readingsKey(kept.id) });
    setSaved(true);
  };
  const numbered = edition.prints.filter(({ kind }) => kind === 'edition').length;
  const finished = numbered >= edition.size;
  const printed = (ledger.state?.impressions.length ?? 0) > 0;
  const planned = plan.data && (
    <>
      <PlanFigures plan={plan.data} />
      <PlanParts plan={plan.data} />
    </>
  );
  const record = (
    <section className="edition-part">
      <h2 className="big">{say('What is recorded')}</h2>
      <p className="soft">
        {say('It goes onto the documentation sheet. What stays empty is a blank line there.')}
      </p>
      <EditionForm edition={edition} onSaved={keep} />
      <p role="status">{saved ? say('Saved.') : ''}</p>
    </section>
  );
  return (
    <>
      <PageHead
        stamp={say('Edition of {size} · {title}', { size: edition.size, title: edition.title })}
        headline={
          finished
            ? say('{numbered} of {size} numbered', { numbered, size: edition.size })
            : plan.data
              ? say('{sheetsInAll} sheets for {size} prints', {
                  sheetsInAll: plan.data.sheetsInAll,
                  size: edition.size,
                })
              : edition.title
        }
      >
        {finished ? (
          !edition.signedOn && (
            <a className="button act" href={`#${signingId}`}>
              {say('Write down when they were signed')}
            </a>
          )
        ) : (
          <ButtonLink kind="act" href={`/editions/${edition.id}/press`}>
            {say('To the press')}
          </ButtonLink>
        )}
      </PageHead>
      <div className="edition-body">
        {!finished && <NoApproval workId={edition.workId} />}
        {plan.isError && <FailureNotice failure={shownFailure(plan.error)} />}
        {printed && <HowFar edition={edition} ledger={ledger} linked={!finished} />}
        {!finished && planned}
        {finished && <Papers edition={edition} lit={Boolean(edition.signedOn)} />}
        {record}
        {!finished && <Papers edition={edition} />}
        {finished && <Fold title={say('How it was planned')}>{planned}</Fold>}
        <PutEditionBy edition={edition} onKept={hold} />
      </div>
    </>
  );
}

/** How far the printing is, and what is open before it is handed out. */
function HowFar({
  edition,
  ledger: { state },
  linked,
}: {
  edition: Edition;
  ledger: Ledger;
  linked: boolean;
}) {
  const count = useEditionCount(edition, state!);
  const open = openMatters(edition, state!);
  return (
    <section className="edition-part">
      <h2 className="big">{say('How far it is')}</h2>
      <CountWords count={count} />
      {edition.prints.length > 0 && (
        <ul className="edition-said" aria-label={say('Still open')}>
          {open.map((sentence) => (
            <li key={sentence} className="minded">
              {told(sentence)}
            </li>
          ))}
        </ul>
      )}
      {linked && (
        <p className="edition-files">
          <ButtonLink href={`/editions/${edition.id}/curate`}>
            {say('Look at them dry, choose, number')}
          </ButtonLink>
        </p>
      )}
    </section>
  );
}

/** @param lit whether the sheet is what comes next */
function Papers({ edition, lit = false }: { edition: Edition; lit?: boolean }) {
  return (
    <section className="edition-part">
      <h2 className="big">{say('Documentation sheet')}</h2>
      <p className="edition-files">
        <ButtonFile
          kind={lit ? 'act' : 'plain'}
          href={inPageWords(`/api/editions/${edition.id}/documentation.pdf`)}
        >
          {say('PDF, A4')}
        </ButtonFile>
        <ButtonFile href={inPageWords(`/api/editions/${edition.id}/documentation.pdf?paper=letter`)}>
          {say('PDF, letter')}
        </ButtonFile>
        <ButtonLink href={labelsPage({ editions: [edition.id] })}>{say('Labels for its prints')}</ButtonLink>
      </p>
    </section>
  );
}
