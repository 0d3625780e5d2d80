import { useState } from 'react';
import { Link } from 'wouter';
import { upperFirst } from '../../../foundation/upperFirst.ts';
import { valueWords } from '../../../paper/charts/toneValueWords.ts';
import { type SeriesTone, seriesTones } from '../../../records/proofSeries.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { Approval, KeptSeriesSettings } from '../../../records/workSeries.ts';
import { agreementWords, doubtSentence, pullsReadBy } from '../../../studio/proofs/goodToPrint.ts';
import { alikeDarknessWords, pullWords } from '../../../studio/proofs/seriesWords.ts';
import { unplacedTones } from '../../../studio/proofs/toneAreas.ts';
import { eyeSigma } from '../../../studio/proofs/workSeries.ts';
import { giveApproval } from '../../client/series.ts';
import { workAspect } from '../../managers/proofs/workFrame.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { darknessText } from '../../words/darknesses.ts';
import { figureText } from '../../words/figures.ts';
import { listWords } from '../../words/listWords.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { toldText } from '../../words/toldText.ts';
import { useSaving } from '../useSaving.ts';
import { ProofsStamp } from './ProofsStamp.tsx';
import { PullPicture } from './PullPicture.tsx';
import { type ProofsPageParts, useProofsChanged } from './useProofs.ts';
import { WithdrawApproval } from './WithdrawApproval.tsx';
import { WordList } from './WordList.tsx';

type Role = 'artist' | 'printer';

/** Good to print: given by two signatures where the rule is met; withdrawn with a reason, and what depended on it told. */
export function ApprovalPage({ work, proofs }: ProofsPageParts) {
  const { approvals, series } = proofs;
  const standard = approvals.find(({ withdrawn }) => withdrawn === null) ?? null;
  const past = approvals.filter(({ withdrawn }) => withdrawn !== null);
  const headline = standard
    ? say('Pull {pull} is good to print', { pull: standard.pull })
    : series.goodToPrint.met
      ? series.goodToPrint.reading.how === 'eye'
        ? say('{capital} agree by eye: two signatures are missing', {
            capital: upperFirst(toldText(pullWords(series.goodToPrint.pulls))),
          })
        : say('{capital} agree: two signatures are missing', {
            capital: upperFirst(toldText(pullWords(series.goodToPrint.pulls))),
          })
      : say('Not good to print yet');
  return (
    <>
      <PageHead stamp={<ProofsStamp work={work} here={say('Good to print')} />} headline={headline} />
      <div className="proofs-body approval-body">
        {standard ? (
          <Standard work={work} proofs={proofs} standard={standard} />
        ) : (
          <TwoSignatures work={work} proofs={proofs} />
        )}
        {past.length > 0 && (
          <section aria-labelledby="past-head">
            <h2 id="past-head">{say('Withdrawn')}</h2>
            <ul className="approval-past">
              {past.map(({ id, pull, withdrawn, restsOnIt }) => (
                <li key={id}>
                  <p>
                    {sayRich('<b>Pull {pull}</b>, by {who}, {day}: {why}', {
                      b: (words) => <b>{words}</b>,
                      pull,
                      who: withdrawn!.who,
                      day: dayWords(withdrawn!.at),
                      why: withdrawn!.why,
                    })}
                  </p>
                  {restsOnIt.length > 0 ? (
                    <WordList words={restsOnIt} />
                  ) : (
                    <p className="soft">{say('Nothing had been printed to it.')}</p>
                  )}
                </li>
              ))}
            </ul>
          </section>
        )}
      </div>
    </>
  );
}

function Standard({ work, proofs, standard }: ProofsPageParts & { standard: Approval }) {
  const pull = proofs.pulls.find(({ id }) => id === standard.pullId);
  const read = seriesTones.flatMap((tone: SeriesTone) => {
    const value = standard.tones[tone];
    return value === null ? [] : [{ tone, value }];
  });
  const said = read.length === 0 ? [] : alikeDarknessWords(read.map(({ value }) => value));
  // as it was read then; an interval of another reading since would not be its own
  const reading = proofs.series.pulls.find(({ id }) => id === standard.pullId)?.tones;
  const tones = read.map(({ tone, value }, i) => {
    const now = reading?.[tone];
    const own = now && Math.abs(now.value - value) < 0.0005 && standard.photograph !== null;
    return `${told(tone)} ${figureText(own ? valueWords(now) : said[i]!)}`;
  });
  const unsure =
    standard.photograph === null ? doubtSentence(pullsReadBy('eye', eyeSigma), standard.tolerance) : null;
  return (
    <section aria-label={say('The standard')} className="approval-standard">
      {pull && <PullPicture pull={pull} aspect={workAspect(work)} longestPx={220} />}
      <div>
        <p>
          {say(
            'It is the standard: {list}, {standard}. It rests on {pull}. The artist accepts prints that differ from it by {darkness}.',
            {
              list: tones.length > 0 ? listWords(tones) : say('no tone was read'),
              standard: standardWords(standard),
              pull: told(pullWords(standard.restsOn)),
              darkness: darknessText(standard.tolerance),
            },
          )}
        </p>
        {unsure && <p>{toldText(unsure)}</p>}
        <p>
          {sayRich('Artist <b>{artist}</b>, printer <b>{printer}</b>, {day}.', {
            b: (words) => <b>{words}</b>,
            artist: standard.artist,
            printer: standard.printer,
            day: dayWords(standard.givenAt),
          })}
        </p>
        {standard.restsOnIt.length > 0 ? (
          <WordList words={standard.restsOnIt} />
        ) : (
          <ButtonLink kind="act" href={`/works/${work.id}/edition`}>
            {say('Plan the edition')}
          </ButtonLink>
        )}
        <WithdrawApproval work={work} approval={standard} />
      </div>
    </section>
  );
}

/** How surely the standard's own tones are known. */
function standardWords({ photograph, tolerance }: Approval): string {
  return photograph === null
    ? say('each {agreement}', {
        agreement: toldText(agreementWords(pullsReadBy('eye', eyeSigma), tolerance)),
      })
    : say('read from its photograph');
}

/** Each signature is a press of its own; the second one gives it. */
function TwoSignatures({ work, proofs: { series, pulls, settings } }: ProofsPageParts) {
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
