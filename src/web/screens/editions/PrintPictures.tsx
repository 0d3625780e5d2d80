import '../proofs/Proofs.css';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { Impression } from '../../../records/edition.ts';
import type { EditionReadings } from '../../../records/editionReadings.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import { ageWords } from '../../../studio/editions/openMatters.ts';
import { openWork, workKey } from '../../client/works.ts';
import { workAspect } from '../../managers/proofs/workFrame.ts';
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
              not named
            </span>
          )}
          <figcaption>
            <b>Approval proof</b>
            {approval && (
              <span>
                pull {approval.number}, {readWords(approval)}
              </span>
            )}
          </figcaption>
        </figure>
        {shown.map(({ impression, n, pull }) => (
          <figure key={impression}>
            <PullPicture pull={{ ...pull, number: n }} aspect={aspect} longestPx={longestPx} />
            <figcaption>
              <b>
                Impression {n}, {verdictOf(impression)}
              </b>
              <span>{readWords(pull)}</span>
              <Link href={`/works/${work}/proofs/${pull.id}/marks`}>Corners, grey chips</Link>
            </figcaption>
          </figure>
        ))}
      </div>
      <p className="soft">All as on the stone.</p>
    </>
  );
}

/** How far the last photograph of a print is read, and how old the print was on it. */
function readWords({ photographs }: PullEntry): string {
  const last = photographs.at(-1);
  if (!last) return 'not photographed';
  const age = last.age ? `at ${ageWords(last.age.minutes)}` : 'at an age not noted';
  switch (last.measuring?.state) {
    case 'measured':
      return `read ${age}`;
    case 'refused':
      return `not read: ${last.measuring.tones?.reason ?? 'it was not found'}`;
    case 'failed':
      return `not read: ${last.measuring.failure?.message ?? 'it failed'}`;
    case 'waiting':
    case 'measuring':
      return `being read, ${age}`;
    default:
      return `kept ${age}, not read`;
  }
}
