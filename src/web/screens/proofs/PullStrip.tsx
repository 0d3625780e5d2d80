import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { isBeingRead, pullAgeWords, pullKindWords, readingTrouble } from '../../managers/proofs/pullWords.ts';
import { workAspect } from '../../managers/proofs/workFrame.ts';
import { PullPicture } from './PullPicture.tsx';
import type { ProofsPageParts } from './useProofs.ts';

/** The pulls side by side, the latest in sight, each with what has to be alike for two to be compared. */
export function PullStrip({ work, proofs: { pulls, series, approvals } }: ProofsPageParts) {
  const strip = useRef<HTMLOListElement>(null);
  const count = pulls.length;
  useEffect(() => {
    if (count > 0 && strip.current) strip.current.scrollLeft = strip.current.scrollWidth;
  }, [count]);
  const standard = approvals.find(({ withdrawn }) => withdrawn === null)?.pull ?? null;
  return (
    <ol ref={strip} className="pull-strip" aria-label="The pulls, each as on the stone">
      {pulls.map((pull) => {
        const read = series.pulls.find(({ id }) => id === pull.id);
        return (
          <li key={pull.id}>
            <Link href={`/works/${work.id}/proofs/${pull.id}`}>
              <PullPicture pull={pull} aspect={workAspect(work)} longestPx={92} />
              <span className="pull-words">
                <b className="big">{pull.number}</b>
                <span>{pull.number === standard ? 'good to print' : pullKindWords[pull.kind]}</span>
                <span className="soft pull-paper">{pull.paper.words}</span>
                <span className="soft">
                  {pull.damp === null ? '' : pull.damp ? 'damp, ' : 'dry, '}
                  {isBeingRead(pull)
                    ? 'being read'
                    : read?.how === 'unread'
                      ? readingTrouble(pull)
                        ? 'not read: see why'
                        : 'not read'
                      : `${read?.how === 'eye' ? 'by eye' : pullAgeWords(read?.age ?? null)}`}
                </span>
                {read && !read.compared && read.how !== 'unread' && <em>not compared</em>}
                {read && read.openFaults.length > 0 && <em className="fault">open fault</em>}
              </span>
            </Link>
          </li>
        );
      })}
    </ol>
  );
}
