import { upperFirst } from '../../../foundation/upperFirst.ts';
import { agreementWords } from '../../../studio/proofs/goodToPrint.ts';
import { pullWords } from '../../../studio/proofs/seriesWords.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { darknessText } from '../../words/darknesses.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { toldText } from '../../words/toldText.ts';
import type { ProofsPageParts } from './useProofs.ts';

/** Where good to print stands: given, ready for its two signatures, or what it lacks. */
export function ApprovalLines({ work, proofs: { approvals, series } }: ProofsPageParts) {
  const standard = approvals.find(({ withdrawn }) => withdrawn === null) ?? null;
  const { met, pulls, missing, reading } = series.goodToPrint;
  return (
    <section className="approval-lines" aria-labelledby="approval-head">
      <div>
        <h2 id="approval-head">{say('Good to print')}</h2>
        {standard ? (
          <p>
            {sayRich(
              '<b>Pull {pull}</b> is the standard{photograph}; prints may differ from it by {darkness}. Artist <b>{artist}</b>, printer <b>{printer}</b>, {day}.',
              {
                b: (words) => <b>{words}</b>,
                pull: standard.pull,
                photograph: standard.photograph === null && say(', told by eye'),
                darkness: darknessText(standard.tolerance),
                artist: standard.artist,
                printer: standard.printer,
                day: dayWords(standard.givenAt),
              },
            )}
          </p>
        ) : met ? (
          <p>
            {say('{capital} agree {agreement}. Two signatures are missing.', {
              capital: upperFirst(toldText(pullWords(pulls))),
              agreement: toldText(agreementWords(reading, series.tolerance)),
            })}
          </p>
        ) : (
          <p>
            {say('Not yet. {missing}', {
              missing: missing
                .slice(0, 2)
                .map((one) => told(one))
                .join(' '),
            })}
          </p>
        )}
      </div>
      <ButtonLink href={`/works/${work.id}/proofs/good`}>
        {standard ? say('The standard') : met ? say('Sign it good to print') : say('What is missing')}
      </ButtonLink>
    </section>
  );
}
