import type { LeavingList, RackLine } from '../../../records/rack.ts';
import type { OutboxView } from '../../managers/bench/runOutbox.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { GumMark } from '../../parts/GumMark.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { BenchSending } from '../bench/BenchSending.tsx';
import { useRack } from './useRack.ts';

/** What the ticks changed, stone by stone: how it stood, and how it stands. */
export function LeavingOutcome({
  before,
  list,
  open,
  sending,
}: {
  before: readonly RackLine[];
  list: LeavingList;
  open: number;
  sending: OutboxView;
}) {
  const rack = useRack();
  const lineOf = (lines: readonly RackLine[], workId: string) =>
    lines.find((line) => line.workId === workId)?.standing ?? null;
  const now = rack.data?.lines ?? [];
  const sent = sending.unsent.length === 0;
  const asking = now.filter(({ standing }) => standing.gumNow).map(({ stoneName }) => stoneName);
  return (
    <>
      <PageHead
        stamp="Left"
        headline={sent && asking.length > 0 ? `${asking.join(', ')} still asks for gum` : 'What that changed'}
      >
        <ButtonLink kind="act" href="/">
          To the rack
        </ButtonLink>
      </PageHead>
      <div className="leaving-foot">
        <BenchSending outbox={sending} />
        {!sent && <p>The rack says so once it is sent.</p>}
        {list.stones.length === 0 && <p>No stone’s log keeps what was ticked for the room.</p>}
        {open > 0 && <p>{open === 1 ? 'One step is' : `${open} steps are`} not ticked.</p>}
      </div>
      <ul className="leaving-outcome">
        {list.stones.map(({ workId, stoneName, title }) => {
          const was = lineOf(before, workId);
          const is = lineOf(now, workId);
          return (
            <li key={workId}>
              <h2>
                <span className="big">{stoneName}</span> {title}
              </h2>
              {is && <GumMark gum={is} />}
              {was && is && was.words !== is.words && <p className="soft">was: {was.words}</p>}
              {is && (
                <p>
                  {was?.words === is.words ? 'as before' : 'is'}: <b>{is.words}</b>
                </p>
              )}
              {is?.next && <p>next: {is.next.words}</p>}
              {is?.risk && <p>at risk: {is.risk}</p>}
              {was?.risk && is && !is.risk && <p>no longer at risk: {was.risk}</p>}
            </li>
          );
        })}
      </ul>
    </>
  );
}
