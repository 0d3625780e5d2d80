import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { CuratedPrint, Edition } from '../../../records/edition.ts';
import type { LedgerState, Verdict } from '../../../records/ledger.ts';
import { judgePrints } from '../../../studio/editions/judgePrints.ts';
import { dryBackWords, openMatters } from '../../../studio/editions/openMatters.ts';
import { destroyRest, suggestPrints } from '../../../studio/editions/suggestPrints.ts';
import { editionKey, editionsKey, readImpressions, readingsKey, savePrints } from '../../client/editions.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { numberTrouble, typedNumber } from '../../managers/typedNumber.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Told } from '../../parts/Told.tsx';
import { say } from '../../words/say.ts';
import { toldText } from '../../words/toldText.ts';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { useSaving } from '../useSaving.ts';
import { DriftSection } from './DriftSection.tsx';
import { PrintLine } from './PrintLine.tsx';
import { PrintPhotograph } from './PrintPhotograph.tsx';
import { PrintPictures } from './PrintPictures.tsx';
import { type Ledger, useLedger } from './useLedger.ts';

/** Drift of an edition, the look at it when dry, and giving the numbers. */
export function Curating({ edition }: { edition: Edition }) {
  const ledger = useLedger(edition.id);
  const { state } = ledger;
  const stamp = say('Edition of {size} · {title}', { size: edition.size, title: edition.title });
  if (state === null) {
    return ledger.failed ? (
      <div className="edition-body">
        <FailureNotice failure={shownFailure(ledger.failed)} />
      </div>
    ) : (
      <p className="unseen">{say('Opening …')}</p>
    );
  }
  if (state.impressions.length === 0) {
    return (
      <>
        <PageHead stamp={stamp} headline={say('Nothing is printed yet')} />
        <EmptyPage
          title={say('Print first')}
          act={
            <ButtonLink kind="act" href={`/editions/${edition.id}/press`}>
              {say('To the press')}
            </ButtonLink>
          }
        >
          <p>{say('What is logged at the press is looked at again here when dry, chosen and numbered.')}</p>
        </EmptyPage>
      </>
    );
  }
  return <Choosing edition={edition} state={state} ledger={ledger} stamp={stamp} />;
}

function Choosing({
  edition,
  state,
  ledger,
  stamp,
}: {
  edition: Edition;
  state: LedgerState;
  ledger: Ledger;
  stamp: string;
}) {
  const queries = useQueryClient();
  const readings = useQuery({
    queryKey: readingsKey(edition.id),
    queryFn: () => readImpressions(edition.id),
  });
  const [age, setAge] = useState('');
  const saving = useSaving<Edition>();
  const [chosen, setChosen] = useState<readonly CuratedPrint[] | null>(null);
  const prints = chosen ?? edition.prints;
  const { impressions } = state;
  const fault = judgePrints(prints, edition.size, impressions);
  const put = (impression: string, print: CuratedPrint | null) =>
    setChosen([...prints.filter((one) => one.impression !== impression), ...(print ? [print] : [])]);
  const keep = (kept: Edition) => {
    queries.setQueryData(editionKey(kept.id), kept);
    void queries.invalidateQueries({ queryKey: editionsKey(kept.workId) });
  };
  const save = async () => {
    const kept = await saving.send(() => savePrints(edition.id, edition.version, prints), keep);
    if (kept === null) return;
    keep(kept);
    setChosen(null);
  };
  const check = (impression: string, at: string, verdict: Verdict) =>
    ledger.log('checked', {
      impression,
      verdict,
      ageMinutes: Math.max(0, Math.round((Date.now() - Date.parse(at)) / 60_000)),
    });
  const ageTrouble = numberTrouble(age, 0, 1e7);
  const numbered = prints.filter(({ kind }) => kind === 'edition').length;
  const good = impressions.filter(({ verdict }) => verdict === 'good').length;
  const open = openMatters({ ...edition, prints }, state);
  return (
    <>
      <PageHead
        stamp={stamp}
        headline={say('{numbered} of {size} numbered', { numbered, size: edition.size })}
      >
        {chosen === null ? (
          <>
            {prints.length > 0 && <p role="status">{say('All is saved.')}</p>}
            {numbered >= edition.size && !edition.signedOn && (
              <ButtonLink kind="act" href={`/editions/${edition.id}`}>
                {say('Write down when they were signed')}
              </ButtonLink>
            )}
          </>
        ) : (
          <Button kind="act" disabled={fault !== null || saving.pending} onClick={() => void save()}>
            {say('Save the numbers')}
          </Button>
        )}
      </PageHead>
      <div className="edition-body">
        {fault && (
          <Notice kind="trouble" title={fault.message}>
            {fault.remedy}
          </Notice>
        )}
        {saving.trouble && <FailureNotice failure={saving.trouble} />}
        <DriftSection edition={edition} state={state} ledger={ledger} readings={readings.data ?? null} />
        <section className="edition-part">
          <h2 className="big">{say('Choose and number')}</h2>
          <p>{toldText(dryBackWords(state))}</p>
          {readings.data && (
            <PrintPictures work={edition.workId} readings={readings.data} impressions={impressions} />
          )}
          <p className="edition-files">
            <Button
              kind={chosen === null && numbered === 0 && good >= edition.size ? 'act' : 'plain'}
              onClick={() =>
                setChosen(suggestPrints(impressions, edition.size, edition.artistProofs, prints))
              }
            >
              {say('Number the good ones in order')}
            </Button>
            {/* before any is given, the rest would be all of them */}
            {prints.length > 0 && (
              <Button onClick={() => setChosen(destroyRest(impressions, prints))}>
                {say('Destroy the rest')}
              </Button>
            )}
          </p>
          <div className="fields">
            <Field
              label={say('How long after pulling they are photographed')}
              unit="min"
              inputMode="decimal"
              hint={say('Empty: they are photographed now.')}
              value={age}
              trouble={ageTrouble}
              onChange={(event) => setAge(event.target.value)}
            />
            <Field
              label={say('Who looks and logs here')}
              maxLength={100}
              autoComplete="off"
              hint={say('Initials are enough. Empty: not said.')}
              value={ledger.who ?? ''}
              onChange={(event) => ledger.setWho(event.target.value === '' ? null : event.target.value)}
            />
          </div>
          <UnsentPhotographs
            of={(belongs) => belongs.to === 'impression' && belongs.editionId === edition.id}
          />
          <ul className="print-lines">
            {impressions.map((impression) => (
              <PrintLine
                key={impression.id}
                impression={impression}
                print={prints.find((one) => one.impression === impression.id) ?? null}
                prints={prints}
                size={edition.size}
                onPut={(print) => put(impression.id, print)}
                photograph={
                  ageTrouble === null && (
                    <PrintPhotograph
                      editionId={edition.id}
                      impression={impression.id}
                      n={impression.n}
                      actor={ledger.who?.trim() || null}
                      ageMinutes={typedNumber(age)}
                      className="button quiet"
                    />
                  )
                }
                onCheck={(verdict) => check(impression.id, impression.at, verdict)}
              />
            ))}
          </ul>
          {open.length > 0 && (
            <ul className="edition-said" aria-label={say('Still open')}>
              {open.map((sentence) => (
                <li key={sentence} className="minded">
                  <Told>{sentence}</Told>
                </li>
              ))}
            </ul>
          )}
        </section>
      </div>
    </>
  );
}
