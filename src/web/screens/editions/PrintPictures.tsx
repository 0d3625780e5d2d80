import '../proofs/Proofs.css';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { EditionReadings } from '../../../records/editionReadings.ts';
import type { Impression } from '../../../records/ledger.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import { ageWords } from '../../../studio/editions/openMatters.ts';
import { openWork, workKey } from '../../client/works.ts';
import { workAspect } from '../../managers/proofs/workFrame.ts';
import { say } from '../../words/say.ts';
import { PullPicture } from '../proofs/PullPicture.tsx';

const longestPx = 150;

/** The prints that were photographed beside the approval proof, all as on the stone, each with how far it is read. */
export function PrintPictures({
  work,
  readings,
  impressions,
}: {
  work: string;
  readings: EditionReadings;
  impressions: readonly Impression[];
}) {
  const owner = useQuery({ queryKey: workKey(work), queryFn: () => openWork(work) });
  const { approval, impressions: shown } = readings;
  if (shown.length === 0 || !owner.data) return null;
  const aspect = workAspect(owner.data);
  const verdictOf = (id: string) => impressions.find((one) => one.id === id)?.verdict;
  return (
    <>
      <div className="print-pictures">
        <figure className="approved">
          {approval ? (
            <PullPicture pull={approval} aspect={aspect} longestPx={longestPx} />
          ) : (
            <span className="pull-sheet none" style={{ width: longestPx, height: longestPx / aspect }}>
              {say('not named')}
            </span>
          )}
          <figcaption>
            <b>{say('Approval proof')}</b>
            {approval && (
              <span>
                {say('pull {number}, {read}', { number: approval.number, read: readWords(approval) })}
              </span>
            )}
          </figcaption>
        </figure>
        {shown.map(({ impression, n, pull }) => (
          <figure key={impression}>
            <PullPicture pull={{ ...pull, number: n }} aspect={aspect} longestPx={longestPx} />
            <figcaption>
              <b>{say('Print {n}, {verdictOf}', { n, verdictOf: verdictOf(impression) })}</b>
              <span>{readWords(pull)}</span>
              <Link href={`/works/${work}/proofs/${pull.id}/marks`}>{say('Corners, grey chips')}</Link>
            </figcaption>
          </figure>
        ))}
      </div>
      <p className="soft">{say('All as on the stone.')}</p>
    </>
  );
}

/** How far the last photograph of a print is read, and how old the print was on it. */
function readWords({ photographs }: PullEntry): string {
  const last = photographs.at(-1);
  if (!last) return say('not photographed');
  const age = last.age ? say('at {age}', { age: ageWords(last.age.minutes) }) : say('at an age not noted');
  switch (last.measuring?.state) {
    case 'measured':
      return say('read {age}', { age });
    case 'refused':
      return say('not read: {reason}', { reason: last.measuring.tones?.reason ?? say('it was not found') });
    case 'not-done':
      return say('not read: {message}', { message: last.measuring.failure?.message ?? say('it failed') });
    case 'waiting':
    case 'measuring':
      return say('being read, {age}', { age });
    default:
      return say('kept {age}, not read', { age });
  }
}
