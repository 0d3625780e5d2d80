import './UnsentPhotographs.css';
import { useQueryClient } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import { Link } from 'wouter';
import type { HeldPull } from '../../managers/held/heldPull.ts';
import { say } from '../../words/say.ts';
import { heldPulls } from './heldPulls.ts';
import { TakenPicture } from './TakenPicture.tsx';
import { unsentPullWords } from './unsentPullWords.ts';

/** The pulls that were entered here and are not sent yet; each leads to what it lacks. */
export function UnsentPulls({ work = null }: { work?: string | null }) {
  const toSend = heldPulls(useQueryClient());
  const view = useSyncExternalStore(toSend.listen, toSend.current);
  const shown = (view.waiting ?? []).filter(({ pull }) => work === null || pull.workId === work);
  if (shown.length === 0) return null;
  return (
    <ul className="unsent-photographs" aria-label={say('Pulls not sent yet')}>
      {shown.map((each) => (
        <li key={each.pull.typed.id}>
          <HeldPicture pull={each.pull} />
          <div>
            <p>
              <Link href={`/works/${each.pull.workId}/proofs/${each.pull.typed.id}`}>
                <b>
                  {say('Pull {n} of {title}: not sent yet', {
                    n: each.pull.typed.number,
                    title: each.pull.workTitle,
                  })}
                </b>
              </Link>
            </p>
            <p role="status">{unsentPullWords(each, view.unreachable)}</p>
          </div>
        </li>
      ))}
    </ul>
  );
}

/** The first photograph of a pull that is held; an empty place where it has none. */
function HeldPicture({ pull: { typed } }: { pull: HeldPull }) {
  const first = typed.photographs[0];
  return first ? <TakenPicture photograph={first.photograph} widthPx={200} alt="" /> : <span />;
}
