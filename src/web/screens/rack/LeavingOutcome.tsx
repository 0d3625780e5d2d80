import type { LeavingList, RackLine } from '../../../records/rack.ts';
import type { ToSendView } from '../../managers/bench/logToSend.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { GumMark } from '../../parts/GumMark.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
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
  sending: ToSendView;
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
        stamp={say('Left')}
        headline={
          sent && asking.length > 0
            ? say('{asking} still asks for gum', { asking: asking.join(', ') })
            : say('What that changed')
        }
      >
        <ButtonLink kind="act" href="/">
          {say('To the rack')}
        </ButtonLink>
      </PageHead>
      <div className="leaving-foot">
        <BenchSending toSend={sending} />
        {!sent && <p>{say('The rack says so once it is sent.')}</p>}
        {list.stones.length === 0 && <p>{say('No stone’s log keeps what was ticked for the room.')}</p>}
        {open > 0 && (
          <p>{say('{open, plural, one {One step is} other {{open} steps are}} not ticked.', { open })}</p>
        )}
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
              {was && is && was.words !== is.words && (
                <p className="soft">{say('was: {was}', { was: told(was.words) })}</p>
              )}
              {is && (
                <p>
                  {was?.words === is.words
                    ? sayRich('as before: <b>{is}</b>', { b: (words) => <b>{words}</b>, is: told(is.words) })
                    : sayRich('is: <b>{is}</b>', { b: (words) => <b>{words}</b>, is: told(is.words) })}
                </p>
              )}
              {is?.next && <p>{say('next: {next}', { next: told(is.next.words) })}</p>}
              {is?.risk && <p>{say('at risk: {risk}', { risk: told(is.risk) })}</p>}
              {was?.risk && is && !is.risk && (
                <p>{say('no longer at risk: {risk}', { risk: told(was.risk) })}</p>
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}
