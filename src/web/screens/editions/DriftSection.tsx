import { type FormEvent, useState } from 'react';
import { Link } from 'wouter';
import type { Edition } from '../../../records/edition.ts';
import type { EditionReadings } from '../../../records/editionReadings.ts';
import type { LedgerState } from '../../../records/ledger.ts';
import { editionDrift } from '../../../studio/editions/drift.ts';
import { editionPulls } from '../../../studio/editions/editionPulls.ts';
import { photographedTones } from '../../../studio/editions/printTones.ts';
import { numberTrouble, typedNumber } from '../../managers/typedNumber.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { Told } from '../../parts/Told.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { EditionDrift } from './EditionDrift.tsx';
import type { Ledger } from './useLedger.ts';

const tones = ['lights', 'middles', 'darks'] as const;
const nothing = { lights: '', middles: '', darks: '', ageMinutes: '' };

/** How far the prints drifted from the approval proof, which to look at, and reading another print. */
export function DriftSection({
  edition,
  state,
  ledger,
  readings,
}: {
  edition: Edition;
  state: LedgerState;
  ledger: Ledger;
  /** null: not there yet. */
  readings: EditionReadings | null;
}) {
  const { pulls, approval, sentences } = editionPulls(
    state.impressions,
    edition.approval,
    photographedTones(readings),
  );
  const drift = editionDrift(pulls);
  const noticed = drift.flatMap((tone) => tone.noticed).sort((one, other) => one.n - other.n);
  const read = pulls.length > 0;
  return (
    <section className="edition-part">
      <h2 className="big">{say('Drift from the approval proof')}</h2>
      {read && approval === null ? (
        <p>
          {sayRich(
            'How the approval proof reads is not known at this age: name the pull that was approved, photographed as these prints are, or type its tones, <link>with the edition</link>.',
            { link: (words) => <Link href={`/editions/${edition.id}`}>{words}</Link> },
          )}
        </p>
      ) : drift.some(({ distances }) => distances.length > 0) ? (
        <EditionDrift drift={drift} />
      ) : (
        <p className="soft">{say('No print was read beside the approval proof yet.')}</p>
      )}
      {noticed.length > 0 && (
        <ul className="edition-said" aria-label={say('Prints to look at')}>
          {noticed.map(({ words }) => (
            <li key={words} className="minded">
              <Told>{words}</Told>
            </li>
          ))}
        </ul>
      )}
      {sentences.map((sentence) => (
        <p key={sentence} className="soft">
          <Told>{sentence}</Told>
        </p>
      ))}
      <ReadPrint state={state} ledger={ledger} />
    </section>
  );
}

function ReadPrint({ state, ledger }: { state: LedgerState; ledger: Ledger }) {
  const { impressions } = state;
  const firstUnread = impressions.find(({ reading }) => reading === null) ?? impressions[0]!;
  const [picked, setPicked] = useState(firstUnread.id);
  const [typed, setTyped] = useState(nothing);
  const [tried, setTried] = useState(false);
  const troubles = {
    lights: numberTrouble(typed.lights, -0.2, 1.2),
    middles: numberTrouble(typed.middles, -0.2, 1.2),
    darks: numberTrouble(typed.darks, -0.2, 1.2),
    ageMinutes: numberTrouble(typed.ageMinutes, 0, 1e7),
  };
  const empty = tones.every((tone) => typed[tone].trim() === '');
  const log = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (empty || Object.values(troubles).some((trouble) => trouble !== null)) return;
    ledger.log('reading', {
      impression: picked,
      lights: typedNumber(typed.lights),
      middles: typedNumber(typed.middles),
      darks: typedNumber(typed.darks),
      ageMinutes: typedNumber(typed.ageMinutes),
    });
    setTyped({ ...nothing, ageMinutes: typed.ageMinutes });
    setTried(false);
    const next = impressions.find(({ id, reading }) => reading === null && id !== picked);
    if (next) setPicked(next.id);
  };
  return (
    <Fold title={say('No photograph: type how a print reads')}>
      <form className="edition-new" aria-label={say('Reading of a print')} onSubmit={log} noValidate>
        <div className="fields">
          <Choice
            label={say('Print')}
            value={picked}
            options={impressions.map(({ id, n, verdict }) => [id, `${n}, ${verdict}`] as const)}
            onChoose={setPicked}
          />
          {tones.map((tone) => (
            <Field
              key={tone}
              label={say('Its {tone}', { tone })}
              unit={say('darkness')}
              inputMode="decimal"
              value={typed[tone]}
              trouble={tried ? troubles[tone] : null}
              onChange={(event) => setTyped({ ...typed, [tone]: event.target.value })}
            />
          ))}
          <Field
            label={say('Minutes since it was pulled')}
            unit="min"
            inputMode="decimal"
            hint={say('A day is 1440. Prints of different ages don’t compare.')}
            value={typed.ageMinutes}
            trouble={tried ? troubles.ageMinutes : null}
            onChange={(event) => setTyped({ ...typed, ageMinutes: event.target.value })}
          />
        </div>
        {tried && empty && <p className="field-trouble">{say('At least one tone is needed.')}</p>}
        <div>
          <Button type="submit">{say('Log the reading')}</Button>
        </div>
      </form>
    </Fold>
  );
}
