import { pullPaper } from '../../../studio/proofs/pullPaper.ts';
import './PullsLaidOut.css';
import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { isBeingRead, pullAgeWords, pullKindWords, readingTrouble } from '../../managers/proofs/pullWords.ts';
import { workAspect } from '../../managers/proofs/workFrame.ts';
import { say } from '../../words/say.ts';
import { PullPicture } from './PullPicture.tsx';
import { UnsentLaidOut } from './UnsentLaidOut.tsx';
import type { ProofsPageParts } from './useProofs.ts';
import { useUnsentPulls } from './useUnsentPulls.ts';

/** The pulls side by side, the latest in sight, each with what has to be alike for two to be compared. */
export function PullsLaidOut({ work, proofs: { pulls, series, approvals } }: ProofsPageParts) {
  const laid = useRef<HTMLOListElement>(null);
  const { unsent, unreachable } = useUnsentPulls(work.id);
  const count = pulls.length + unsent.length;
  useEffect(() => {
    if (count === 0 || !laid.current) return;
    showLatest(laid.current);
    markWhatLiesBeyond(laid.current);
  }, [count]);
  const standard = approvals.find(({ withdrawn }) => withdrawn === null)?.pull ?? null;
  return (
    <ol
      ref={laid}
      className="pulls-laid"
      aria-label={say('The pulls, each as on the stone')}
      onScroll={(event) => markWhatLiesBeyond(event.currentTarget)}
    >
      {pulls.map((pull) => {
        const read = series.pulls.find(({ id }) => id === pull.id);
        return (
          <li key={pull.id}>
            <Link href={`/works/${work.id}/proofs/${pull.id}`}>
              <PullPicture pull={pull} aspect={workAspect(work)} longestPx={84} />
              <span className="pull-words">
                <b className="big">{pull.number}</b>
                <span>{pull.number === standard ? say('good to print') : pullKindWords[pull.kind]}</span>
                <span className="soft pull-paper">{pullPaper(pull)}</span>
                <span className="soft">
                  {pull.damp === null
                    ? isBeingRead(pull)
                      ? say('being read')
                      : read?.how === 'unread'
                        ? readingTrouble(pull)
                          ? say('not read: see why')
                          : say('not read')
                        : `${read?.how === 'eye' ? say('by eye') : pullAgeWords(read?.age ?? null)}`
                    : pull.damp
                      ? say(
                          'damp, {isBeingRead, select, yes {being read} other {{how, select, yes {{readingTrouble, select, yes {not read: see why} other {not read}}} other {{pullAge}}}}}',
                          {
                            isBeingRead: isBeingRead(pull) ? 'yes' : 'no',
                            how: read?.how === 'unread' ? 'yes' : 'no',
                            readingTrouble: readingTrouble(pull) ? 'yes' : 'no',
                            pullAge: read?.how === 'eye' ? say('by eye') : pullAgeWords(read?.age ?? null),
                          },
                        )
                      : say(
                          'dry, {isBeingRead, select, yes {being read} other {{how, select, yes {{readingTrouble, select, yes {not read: see why} other {not read}}} other {{pullAge}}}}}',
                          {
                            isBeingRead: isBeingRead(pull) ? 'yes' : 'no',
                            how: read?.how === 'unread' ? 'yes' : 'no',
                            readingTrouble: readingTrouble(pull) ? 'yes' : 'no',
                            pullAge: read?.how === 'eye' ? say('by eye') : pullAgeWords(read?.age ?? null),
                          },
                        )}
                </span>
                {read && !read.compared && read.how !== 'unread' && <em>{say('not compared')}</em>}
                {read && read.openFaults.length > 0 && <em className="fault">{say('standing fault')}</em>}
              </span>
            </Link>
          </li>
        );
      })}
      {unsent.map((shown) => (
        <UnsentLaidOut key={shown.pull.typed.id} shown={shown} unreachable={unreachable} />
      ))}
    </ol>
  );
}

/** Scrolls to the latest pulls so that the first of those in sight is whole: room is made after the last one for that. */
function showLatest(row: HTMLElement): void {
  row.style.removeProperty('--room-after');
  const furthest = row.scrollWidth - row.clientWidth;
  if (furthest <= 1) return;
  const [first, ...others] = [...row.children].map((one) => (one as HTMLElement).offsetLeft);
  const start = others.map((left) => left - first!).find((left) => left >= furthest) ?? furthest;
  row.style.setProperty('--room-after', `${start - furthest}px`);
  row.scrollLeft = start;
}

/** At an edge behind which more pulls lie, the row fades. */
function markWhatLiesBeyond(row: HTMLElement): void {
  const after = row.scrollWidth - row.clientWidth - row.scrollLeft;
  row.toggleAttribute('data-more-before', row.scrollLeft > 1);
  row.toggleAttribute('data-more-after', after > 1);
}
