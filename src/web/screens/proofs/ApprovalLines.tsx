import { agreementWords } from '../../../studio/proofs/goodToPrint.ts';
import { capital, darknessWords, pullWords } from '../../../studio/proofs/seriesWords.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import type { ProofsPageParts } from './useProofs.ts';

/** Where good to print stands: given, ready for its two marks, or what it lacks. */
export function ApprovalLines({ work, proofs: { approvals, series } }: ProofsPageParts) {
  const standard = approvals.find(({ withdrawn }) => withdrawn === null) ?? null;
  const { met, pulls, missing, reading } = series.goodToPrint;
  return (
    <section className="approval-lines" aria-labelledby="approval-head">
      <div>
        <h2 id="approval-head">Good to print</h2>
        {standard ? (
          <p>
            <b>Pull {standard.pull}</b> is the standard{standard.photograph === null && ', told by eye'};
            prints may differ from it by {darknessWords(standard.tolerance)}. Artist <b>{standard.artist}</b>,
            printer <b>{standard.printer}</b>, {dayWords(standard.givenAt)}.
          </p>
        ) : met ? (
          <p>
            {capital(pullWords(pulls))} agree {agreementWords(reading, series.tolerance)}. Two marks are
            missing.
          </p>
        ) : (
          <p>Not yet. {missing.slice(0, 2).join(' ')}</p>
        )}
      </div>
      <ButtonLink href={`/works/${work.id}/proofs/good`}>
        {standard ? 'The standard' : 'The two marks'}
      </ButtonLink>
    </section>
  );
}
