import { useQueryClient } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import { Link } from 'wouter';
import { missingWords } from '../../managers/held/missingWords.ts';
import type { ShownPull } from '../../managers/held/pullsToSend.ts';
import { say } from '../../words/say.ts';
import { heldPhotographs } from '../held/heldPhotographs.ts';
import { TakenPicture } from '../held/TakenPicture.tsx';

/** A pull that is not sent yet, among those that are kept: its picture as it was taken, and what it lacks first. */
export function UnsentLaidOut({ shown, unreachable }: { shown: ShownPull; unreachable: boolean }) {
  const toSend = heldPhotographs(useQueryClient());
  const pictures = useSyncExternalStore(toSend.listen, toSend.current);
  const { pull, refusal } = shown;
  const { typed, workId } = pull;
  const first = typed.photographs[0];
  return (
    <li className="unsent">
      <Link href={`/works/${workId}/proofs/${typed.id}`}>
        {first ? (
          <TakenPicture className="unsent-laid-out" photograph={first.photograph} widthPx={200} alt="" />
        ) : (
          <span className="pull-sheet none unsent-laid-out">{say('no picture')}</span>
        )}
        <span className="pull-words">
          <b className="big">{typed.number}</b>
          <em className={refusal ? 'fault' : undefined}>
            {refusal ? say('not taken: see why') : say('not sent yet')}
          </em>
          <span className="soft pull-paper">{typed.paper?.words}</span>
          <span className="soft">
            {unreachable ? say('Stonetone does not answer.') : missingWords(pull, pictures)[0]}
          </span>
        </span>
      </Link>
    </li>
  );
}
