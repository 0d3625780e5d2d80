import { upperFirst } from '../../../foundation/upperFirst.ts';
import { pullWords } from '../../../studio/proofs/seriesWords.ts';
import { dayWords } from '../../parts/entryWords.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { toldText } from '../../words/toldText.ts';
import { ProofsStamp } from './ProofsStamp.tsx';
import { StandardInForce } from './StandardInForce.tsx';
import { TwoSignatures } from './TwoSignatures.tsx';
import type { ProofsPageParts } from './useProofs.ts';
import { WordList } from './WordList.tsx';

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
          <StandardInForce work={work} proofs={proofs} standard={standard} />
        ) : (
          <TwoSignatures work={work} proofs={proofs} />
        )}
        {past.length > 0 && (
          <section aria-labelledby="past-head">
            <h2 id="past-head">{say('No longer good to print')}</h2>
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
