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
        stamp={`Edition of ${edition.size} · ${edition.title}`}
        headline={plan.data ? `${plan.data.sheetsInAll} sheets for ${edition.size} prints` : edition.title}
      >
        <ButtonLink kind="act" href={`/editions/${edition.id}/press`}>
          To the press
        </ButtonLink>
      </PageHead>
      <div className="edition-body">
        <NoApproval workId={edition.workId} />
        {plan.isError && <FailureNotice failure={shownFailure(plan.error)} />}
        {plan.data && <PlanFigures plan={plan.data} />}
        {plan.data && <PlanParts plan={plan.data} />}
        <section className="edition-part">
          <h2 className="big">What is recorded</h2>
          <p className="soft">
            It goes onto the documentation sheet. What stays empty is a blank line there.
          </p>
          <EditionForm edition={edition} onSaved={keep} />
          <p role="status">{saved ? 'Saved.' : ''}</p>
        </section>
        <section className="edition-part">
          <h2 className="big">Documentation sheet</h2>
          <p className="edition-files">
            <ButtonFile href={`/api/editions/${edition.id}/documentation.pdf`}>PDF, A4</ButtonFile>
            <ButtonFile href={`/api/editions/${edition.id}/documentation.pdf?paper=letter`}>
              PDF, letter
            </ButtonFile>
            <ButtonLink href={labelsPage({ editions: [edition.id] })}>Labels for its prints</ButtonLink>
          </p>
        </section>
        <ArchiveEdition edition={edition} onKept={hold} />
      </div>
    </>
  );
}

function piecesWords(pieces: number): string {
  return pieces === 1 ? 'one piece' : `${pieces} pieces`;
}

function PlanFigures({ plan }: { plan: EditionPlan }) {
  const { tearDown, inkGrams, minutes, rackPlaces } = plan;
  return (
    <div className="edition-figures">
      <Figure value={tearDown?.parentSheets == null ? '–' : String(tearDown.parentSheets)}>
        sheets to buy
        {tearDown?.pieces.length ? `, ${piecesWords(tearDown.pieces.length)} from each` : ': size not known'}
      </Figure>
      <Figure value={inkGrams ? rangeOf(inkGrams) : '–'} {...(inkGrams ? { beside: 'g' } : {})}>
        ink{inkGrams ? `, ${basisWords(inkGrams)}` : ': inked area not known'}
      </Figure>
      <Figure value={hoursRange(minutes)} beside="h">
        with two people, {basisWords(minutes)}
      </Figure>
      <Figure value={String(rackPlaces.needed)}>
        places to dry{rackPlaces.missing ? `, ${rackPlaces.missing} too few` : ''}
      </Figure>
    </div>
  );
}

function PlanParts({ plan }: { plan: EditionPlan }) {
  const { sheets, tearDown, spoilage, growthMm, paperGrams, newsprint } = plan;
  return (
    <div className="edition-plan">
      <section className="edition-part">
        <h2 className="big">Sheets</h2>
        <table className="edition-table">
          <tbody>
            {sheets.map(({ what, sheets: count, words }) => (
              <tr key={what}>
                <th scope="row">{words}</th>
                <td className="big">{count}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">In all, on the good paper</th>
              <td className="big">{plan.sheetsInAll}</td>
            </tr>
            <tr>
              <th scope="row">Newsprint before it, common practice</th>
              <td className="big">
                {newsprint.low} to {newsprint.high}
              </td>
            </tr>
          </tbody>
        </table>
        <p className="soft">
          {spoilage.basis === 'this room'
            ? `Spoilage: this room’s, ${percent(spoilage.value)} of the sound ones (95 % interval ${percent(spoilage.low)} to ${percent(spoilage.high)}) from ${spoilage.impressions} impressions.`
            : spoilage.warnings[0]}
        </p>
      </section>
      <section className="edition-part">
        <h2 className="big">Paper</h2>
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
              Damp it grows {mm(growthMm.long)} on its long side and {mm(growthMm.short)} on its short one,
              from memory: measure one.
            </li>
          )}
          {paperGrams && (
            <li>All sheets weigh {Math.round(paperGrams.value)} g dry, by the stated weight.</li>
          )}
        </ul>
        <Fold title="Where these figures come from">
          <p>
            How many sheets: our rule. Ink: a film of 1 to 2 g/m² on what is covered, and 30 to 60 g that slab
            and roller keep, from memory. Minutes: {plan.minutes.warnings[0]} Pieces lie in a plain grid; a
            mixed one sometimes gives one more.
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
  return basis === 'this room' ? 'this room’s pace' : basis === 'memory' ? 'from memory' : basis;
}

function mm({ low, high }: Measured): string {
  return `${low.toFixed(1)} to ${high.toFixed(1)} mm`;
}

function percent(share: number): string {
  return Number.isFinite(share) ? `${Math.round(100 * share)} %` : 'any';
}
