import { useState } from 'react';
import { Link } from 'wouter';
import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { Approval, KeptSeriesSettings } from '../../../records/workSeries.ts';
import { agreementWords, doubtSentence } from '../../../studio/proofs/goodToPrint.ts';
import { pullWords } from '../../../studio/proofs/seriesWords.ts';
import { unplacedTones } from '../../../studio/proofs/toneAreas.ts';
import { giveApproval } from '../../client/series.ts';
import { workAspect } from '../../managers/proofs/workFrame.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { darknessText } from '../../words/darknesses.ts';
import { listWords } from '../../words/listWords.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { toldText } from '../../words/toldText.ts';
import { useSaving } from '../useSaving.ts';
import { PullPicture } from './PullPicture.tsx';
import { type ProofsPageParts, useProofsChanged } from './useProofs.ts';
import { WordList } from './WordList.tsx';

type Role = 'artist' | 'printer';

/** Each signature is a press of its own; the second one gives it. */
export function TwoSignatures({ work, proofs: { series, pulls, settings } }: ProofsPageParts) {
  const changed = useProofsChanged(work.id);
  const saving = useSaving<Approval>();
  const [typed, setTyped] = useState({ artist: '', printer: pulls.at(-1)?.who ?? '' });
  const [signed, setSigned] = useState<Readonly<Record<Role, boolean>>>({ artist: false, printer: false });
  const { met, pulls: rest, missing, reading } = series.goodToPrint;
  const number = rest.at(-1);
  const unsure = doubtSentence(reading, series.tolerance);
  const resting = pulls.filter((pull) => rest.includes(pull.number));
  const press = async (role: Role) => {
    const next = { ...signed, [role]: !signed[role] };
    setSigned(next);
    if (!next.artist || !next.printer || number === undefined) return;
    const given = await saving.send(() =>
      giveApproval(work.id, { pull: number, artist: typed.artist.trim(), printer: typed.printer.trim() }),
    );
    if (given) await changed();
    else setSigned({ artist: false, printer: false });
  };
  if (!met)
    return (
      <section aria-label={say('What is missing')}>
        <p>
          {say(
            'It is a rule, not a feeling: three comparable pulls whose tones lie within ±{darkness} of each other, no open fault, and the signatures of artist and printer. Missing:',
            { darkness: darknessText(series.tolerance) },
          )}
        </p>
        <WordList words={missing} />
        <LeftOut work={work} settings={settings} />
        <p>
          <ButtonLink kind="act" href={`/works/${work.id}/proofs/new`}>
            {pulls.length === 0 ? say('Enter a pull') : say('Enter the next pull')}
          </ButtonLink>
        </p>
        <RestsOn work={work} pulls={resting} />
      </section>
    );
  return (
    <section aria-label={say('The two signatures')}>
      <p>
        {reading.how === 'camera'
          ? say(
              '{capital} agree {agreement}. From then on pull {number}, with its photograph, is the standard, and every tone of a print may differ from it by {darkness}. Each signs with their own initials.',
              {
                capital: upperFirst(toldText(pullWords(rest))),
                agreement: toldText(agreementWords(reading, series.tolerance)),
                number,
                darkness: darknessText(series.tolerance),
              },
            )
          : say(
              '{capital} agree {agreement}. From then on pull {number}, as told by eye, is the standard, and every tone of a print may differ from it by {darkness}. Each signs with their own initials.',
              {
                capital: upperFirst(toldText(pullWords(rest))),
                agreement: toldText(agreementWords(reading, series.tolerance)),
                number,
                darkness: darknessText(series.tolerance),
              },
            )}
      </p>
      {unsure && <p>{toldText(unsure)}</p>}
      <LeftOut work={work} settings={settings} />
      <div className="two-marks">
        {(['artist', 'printer'] as const).map((role) => (
          <div key={role}>
            <Field
              label={role === 'artist' ? say('The artist’s initials') : say('The printer’s initials')}
              autoComplete="off"
              maxLength={100}
              disabled={signed[role]}
              {...(typed[role].trim() === '' && { hint: say('Initials first, then the signature.') })}
              value={typed[role]}
              onChange={(event) => setTyped((now) => ({ ...now, [role]: event.target.value }))}
            />
            <Button
              kind={!signed[role] && (role === 'artist' || signed.artist) ? 'act' : 'plain'}
              aria-pressed={signed[role]}
              disabled={typed[role].trim() === '' || saving.pending}
              onClick={() => void press(role)}
            >
              {signed[role]
                ? say('{typed} accepts it. Take back', { typed: typed[role].trim() })
                : role === 'artist'
                  ? say('I accept pull {number}, as artist', { number })
                  : say('I accept pull {number}, as printer', { number })}
            </Button>
          </div>
        ))}
      </div>
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
      <RestsOn work={work} pulls={resting} />
    </section>
  );
}

/** Tones that nothing on the stone stands for: good to print says nothing of them. */
function LeftOut({ work, settings }: { work: WorkEntry; settings: KeptSeriesSettings }) {
  const tones = unplacedTones(settings.areas);
  if (tones.length === 0) return null;
  return (
    <p>
      {say('Nothing on this stone stands for {list}: good to print says nothing of them.', {
        list: listWords(tones.map((tone) => told(tone))),
      })}{' '}
      <Link href={`/works/${work.id}/proofs/areas`}>{say('Draw what stands for them')}</Link>
    </p>
  );
}

/** The pulls that good to print rests on, to be looked at before anybody signs. */
function RestsOn({ work, pulls }: { work: WorkEntry; pulls: readonly PullEntry[] }) {
  if (pulls.length === 0) return null;
  return (
    <ul className="approval-rests" aria-label={say('The pulls that it rests on, each as on the stone')}>
      {pulls.map((pull) => (
        <li key={pull.id}>
          <Link href={`/works/${work.id}/proofs/${pull.id}`}>
            <PullPicture pull={pull} aspect={workAspect(work)} longestPx={200} />
            <span>{say('Pull {number}', { number: pull.number })}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
