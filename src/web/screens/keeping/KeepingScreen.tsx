import './Keeping.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { CopiesState } from '../../../records/copies.ts';
import { copiesKey, copyNow, readCopies } from '../../client/copies.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { busyWords, copiesHeadline } from '../../managers/copiesTold.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { CopiesFolder } from './CopiesFolder.tsx';
import { CopiesList } from './CopiesList.tsx';
import { TakeRecordsOut } from './TakeRecordsOut.tsx';

/** While something is done, and else, ms. */
const [askSoonMs, askLaterMs] = [1000, 60_000];

/** What is kept and how it outlives the machine: daily copies, records to take out, papers from elsewhere, labels. */
export default function KeepingScreen() {
  const queries = useQueryClient();
  const copies = useQuery({
    queryKey: copiesKey,
    queryFn: readCopies,
    staleTime: 0,
    refetchInterval: ({ state: { data } }) => (data?.busy ? askSoonMs : askLaterMs),
  });
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const act = async (asked: Promise<CopiesState>): Promise<boolean> => {
    setTrouble(null);
    try {
      queries.setQueryData(copiesKey, await asked);
      // what was begun shows at the next look
      await queries.invalidateQueries({ queryKey: copiesKey });
      return true;
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
      return false;
    }
  };
  const state = copies.data;
  return (
    <>
      <PageHead
        stamp={say('Copies and labels')}
        headline={state ? copiesHeadline(state) : say('What is kept')}
      >
        {state && state.folder !== null && (
          <Button kind="act" disabled={state.busy !== null} onClick={() => void act(copyNow())}>
            {state.busy?.act === 'copying' ? say('Copying …') : say('Copy now')}
          </Button>
        )}
      </PageHead>
      <div className="keeping">
        <section className="keeping-part" aria-labelledby="copies-head">
          <h2 id="copies-head" className="big">
            {say('Daily copies')}
          </h2>
          {copies.isPending && <p className="soft">{say('Looking at the copies …')}</p>}
          {copies.isError && <FailureNotice failure={shownFailure(copies.error)} />}
          {trouble && <FailureNotice failure={trouble} />}
          {state && (
            <>
              <p role="status" className="keeping-busy">
                {busyWords(state) ?? ''}
              </p>
              <CopiesList state={state} act={act} />
              <CopiesFolder key={state.folder ?? 'none'} state={state} act={act} />
            </>
          )}
        </section>
        <div className="keeping-side">
          <TakeRecordsOut />
          <ul className="keeping-ways">
            <li>
              <Link href="/protocols">
                <span className="big">{say('Protocols of other studios')}</span>
                <span className="soft">
                  {say('Bring one in, read it, lay it beside a work of your own.')}
                </span>
              </Link>
            </li>
            <li>
              <Link href="/labels">
                <span className="big">{say('Labels')}</span>
                <span className="soft">
                  {say('For stones, bottles and prints, with a code that leads to the record.')}
                </span>
              </Link>
            </li>
          </ul>
        </div>
      </div>
    </>
  );
}
