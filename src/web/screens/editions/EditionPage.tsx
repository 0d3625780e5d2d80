import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { Measured } from '../../../foundation/measured.ts';
import { tearDownSvg } from '../../../paper/charts/tearDown.ts';
import type { Edition, EditionPlan } from '../../../records/edition.ts';
import {
  editionKey,
  editionPlanKey,
  editionsKey,
  openEditionPlan,
  readingsKey,
} from '../../client/editions.ts';
import { labelsPage } from '../../client/labels.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { ButtonFile, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Figure } from '../../parts/Figure.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { lengthFigure, lengthWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { ArchiveEdition } from './ArchiveEdition.tsx';
import { EditionForm } from './EditionForm.tsx';
import { NoApproval } from './NoApproval.tsx';

/** What an edition needs, what is recorded of it, and its documentation sheet. */
export function EditionPage({ edition }: { edition: Edition }) {
  const queries = useQueryClient();
  const [saved, setSaved] = useState(false);
  const plan = useQuery({
    queryKey: [...editionPlanKey(edition.id), edition.version],
    queryFn: () => openEditionPlan(edition.id),
    placeholderData: (before) => before,
    staleTime: 0,
  });
  const hold = (kept: Edition) => {
    queries.setQueryData(editionKey(kept.id), kept);
    void queries.invalidateQueries({ queryKey: editionsKey(kept.workId) });
  };
  const keep = (kept: Edition) => {
    hold(kept);
    void queries.invalidateQueries({ queryKey: readingsKey(kept.id) });
    setSaved(true);
  };
  return (
    <>
      <PageHead
        stamp={say('Edition of {size} · {title}', { size: edition.size, title: edition.title })}
        headline={
          plan.data
            ? say('{sheetsInAll} sheets for {size} prints', {
                sheetsInAll: plan.data.sheetsInAll,
                size: edition.size,
              })
            : edition.title
        }
      >
        <ButtonLink kind="act" href={`/editions/${edition.id}/press`}>
          {say('To the press')}
        </ButtonLink>
      </PageHead>
      <div className="edition-body">
        <NoApproval workId={edition.workId} />
        {plan.isError && <FailureNotice failure={shownFailure(plan.error)} />}
        {plan.data && <PlanFigures plan={plan.data} />}
        {plan.data && <PlanParts plan={plan.data} />}
        <section className="edition-part">
          <h2 className="big">{say('What is recorded')}</h2>
          <p className="soft">
            {say('It goes onto the documentation sheet. What stays empty is a blank line there.')}
          </p>
          <EditionForm edition={edition} onSaved={keep} />
          <p role="status">{saved ? say('Saved.') : ''}</p>
        </section>
        <section className="edition-part">
          <h2 className="big">{say('Documentation sheet')}</h2>
          <p className="edition-files">
            <ButtonFile href={`/api/editions/${edition.id}/documentation.pdf`}>{say('PDF, A4')}</ButtonFile>
            <ButtonFile href={`/api/editions/${edition.id}/documentation.pdf?paper=letter`}>
              {say('PDF, letter')}
            </ButtonFile>
            <ButtonLink href={labelsPage({ editions: [edition.id] })}>
              {say('Labels for its prints')}
            </ButtonLink>
          </p>
        </section>
        <ArchiveEdition edition={edition} onKept={hold} />
      </div>
    </>
  );
}

function piecesWords(pieces: number): string {
  return say('{pieces, plural, one {one piece} other {{pieces} pieces}}', { pieces });
}

function PlanFigures({ plan }: { plan: EditionPlan }) {
  const { tearDown, inkGrams, minutes, rackPlaces } = plan;
  return (
    <div className="edition-figures">
      <Figure value={tearDown?.parentSheets == null ? '–' : String(tearDown.parentSheets)}>
        {tearDown?.pieces.length
          ? say('sheets to buy, {pieces} from each', { pieces: piecesWords(tearDown.pieces.length) })
          : say('sheets to buy: size not known')}
      </Figure>
      <Figure value={inkGrams ? rangeOf(inkGrams) : '–'} {...(inkGrams ? { beside: 'g' } : {})}>
        {inkGrams ? say('ink, {basis}', { basis: basisWords(inkGrams) }) : say('ink: inked area not known')}
      </Figure>
      <Figure value={hoursRange(minutes)} beside={say('h')}>
        {say('with two people, {basis}', { basis: basisWords(minutes) })}
      </Figure>
      <Figure value={String(rackPlaces.needed)}>
        {rackPlaces.missing
          ? say('places to dry, {missing} too few', { missing: rackPlaces.missing })
          : say('places to dry')}
      </Figure>
    </div>
  );
}

function PlanParts({ plan }: { plan: EditionPlan }) {
  const { sheets, tearDown, spoilage, growthMm, paperGrams, newsprint } = plan;
  return (
    <div className="edition-plan">
      <section className="edition-part">
        <h2 className="big">{say('Sheets')}</h2>
        <table className="edition-table">
          <tbody>
            {sheets.map(({ what, sheets: count, words }) => (
              <tr key={what}>
                <th scope="row">{words}</th>
                <td className="big">{count}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">{say('In all, on the good paper')}</th>
              <td className="big">{plan.sheetsInAll}</td>
            </tr>
            <tr>
              <th scope="row">{say('Newsprint before it, common practice')}</th>
              <td className="big">{say('{low} to {high}', { low: newsprint.low, high: newsprint.high })}</td>
            </tr>
          </tbody>
        </table>
        <p className="soft">
          {spoilage.basis === 'this room'
            ? say(
                'Spoilage: this room’s, {percent} of the sound ones (95 % interval {percent2} to {percent3}) from {impressions} impressions.',
                {
                  percent: percent(spoilage.value),
                  percent2: percent(spoilage.low),
                  percent3: percent(spoilage.high),
                  impressions: spoilage.impressions,
                },
              )
            : spoilage.warnings[0]}
        </p>
      </section>
      <section className="edition-part">
        <h2 className="big">{say('Paper')}</h2>
        {tearDown && (
          <div
            className="edition-chart"
            // biome-ignore lint/security/noDangerouslySetInnerHtml: our own picture, its words made safe where it is drawn
            dangerouslySetInnerHTML={{ __html: tearDownSvg(tearDown, { width: 420, idPrefix: 'tear' }) }}
          />
        )}
        <ul className="edition-said">
          {plan.sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
          {growthMm && (
            <li>
              {say(
                'Damp it grows {mm} on its long side and {mm2} on its short one, from memory: measure one.',
                { mm: mm(growthMm.long), mm2: mm(growthMm.short) },
              )}
            </li>
          )}
          {paperGrams && (
            <li>
              {say('All sheets weigh {paperGrams} g dry, by the stated weight.', {
                paperGrams: Math.round(paperGrams.value),
              })}
            </li>
          )}
        </ul>
        <Fold title={say('Where these figures come from')}>
          <p>
            {say(
              'How many sheets: our rule. Ink: a film of 1 to 2 g/m² on what is covered, and 30 to 60 g that slab and roller keep, from memory. Minutes: {warnings} Pieces lie in a plain grid; a mixed one sometimes gives one more.',
              { warnings: plan.minutes.warnings[0] },
            )}
          </p>
        </Fold>
      </section>
    </div>
  );
}

function rangeOf({ low, high }: Measured): string {
  return `${Math.round(low)}–${Math.round(high)}`;
}

function hoursRange({ low, high }: Measured): string {
  const half = (minutes: number) => String(Math.round(minutes / 30) / 2);
  return `${half(low)}–${half(high)}`;
}

function basisWords({ basis }: Measured): string {
  return basis === 'this room' ? say('this room’s pace') : basis === 'memory' ? say('from memory') : basis;
}

function mm({ low, high }: Measured): string {
  return say('{low} to {high}', { low: lengthFigure(low, 1), high: lengthWords(high, 1) });
}

function percent(share: number): string {
  return Number.isFinite(share) ? `${Math.round(100 * share)} %` : say('any');
}
