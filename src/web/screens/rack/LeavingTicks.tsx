import { useEffect, useRef } from 'react';
import type { LeavingList, RackLine } from '../../../records/rack.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { stepKey } from '../../managers/stepKey.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { BenchSending } from '../bench/BenchSending.tsx';
import { LeavingOutcome } from './LeavingOutcome.tsx';
import { useLeavingDesk } from './useLeavingDesk.ts';

/** The list with its ticks; then what they changed. */
export function LeavingTicks({ list, before }: { list: LeavingList; before: readonly RackLine[] }) {
  const { desk, view } = useLeavingDesk(list);
  const all = list.stones.reduce((sum, { steps }) => sum + steps.length, list.room.length);
  const open = all - view.ticked.size;
  const top = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (view.left) top.current?.scrollIntoView({ block: 'start' });
  }, [view.left]);
  if (view.left) {
    return (
      <div ref={top} className="leaving">
        <LeavingOutcome before={before} list={list} open={open} sending={view.sending} />
      </div>
    );
  }
  const group = (workId: string | null, steps: readonly string[]) => (
    <ul>
      {steps.map((words, index) => (
        <li key={words}>
          <Tick
            words={words}
            on={view.ticked.has(stepKey(workId, index))}
            onToggle={() => void desk.toggle(workId, index)}
          />
        </li>
      ))}
    </ul>
  );
  return (
    <div ref={top} className="leaving">
      <PageHead stamp={say('Leaving now · about five minutes')} headline={leavingHeadline(list)} />
      {list.stones.length === 0 && (
        <p className="leaving-none">
          {say(
            'Nothing was logged of any stone within the last 16 hours, none asks for gum, and of each it is known whether it is gummed. What was done and not logged is not known here.',
          )}
        </p>
      )}
      {list.stones.map(({ workId, stoneName, title, steps }) => (
        <section key={workId} aria-label={`${stoneName}, ${title}`}>
          <h2>
            <span className="big">{stoneName}</span> {title}
          </h2>
          {group(
            workId,
            steps.map(({ words }) => words),
          )}
        </section>
      ))}
      {list.room.length > 0 && (
        <section aria-label={say('The room')}>
          <h2>
            <span className="big">{say('The room')}</span>
          </h2>
          {group(null, list.room)}
        </section>
      )}
      <div className="leaving-foot">
        {view.trouble !== null && <FailureNotice failure={shownFailure(view.trouble)} />}
        <BenchSending toSend={view.sending} />
        <Button kind={open === 0 ? 'act' : 'plain'} onClick={() => void desk.leave()}>
          {open === 0 ? say('All done: leave') : say('Leave, {open} not done', { open })}
        </Button>
        <p className="soft">
          {say(
            'Common practice, no source. How acid and solvent are kept and thrown away is for your local code and your licensed disposal.',
          )}
        </p>
      </div>
    </div>
  );
}

function leavingHeadline({ stones }: LeavingList): string {
  const names = stones.map(({ stoneName }) => stoneName);
  if (names.length === 0) return say('No stone is in hand');
  if (names.length === 1) return say('Leave {names} so that it keeps', { names: names[0] });
  return say('Leave {count} stones so that they keep', { count: names.length });
}

function Tick({ words, on, onToggle }: { words: string; on: boolean; onToggle: () => void }) {
  return (
    <button type="button" role="checkbox" aria-checked={on} className="leaving-tick" onClick={onToggle}>
      <span aria-hidden="true">{on ? '✓' : ''}</span>
      {told(words)}
    </button>
  );
}
