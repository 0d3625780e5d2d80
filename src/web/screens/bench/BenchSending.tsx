import type { ToSendView } from '../../managers/bench/logToSend.ts';
import { momentText } from '../../managers/localMoment.ts';
import { say } from '../../words/say.ts';

/** Whatever it is that waits. */
type Sending = Pick<ToSendView, 'state' | 'kept'> & { readonly unsent: { readonly length: number } };

/**
 * How much is not sent yet, and what becomes of it; unseen while all goes through. Where the page was opened without the
 * server, how old what it shows is.
 */
export function BenchSending({
  toSend,
  heldSince = null,
}: {
  toSend: Sending;
  /** When this device heard last what is shown, ms since 1970; null where the page heard it itself. */
  heldSince?: number | null;
}) {
  const { unsent, state } = toSend;
  const shown = unsent.length > 1 || (unsent.length > 0 && state !== 'well');
  return (
    <>
      {heldSince !== null && <p className="bench-sending">{heldWords(heldSince)}</p>}
      <p role="status" className={shown ? 'bench-sending' : 'unseen'}>
        {shown ? sendingWords(toSend) : say('All is sent and kept.')}
      </p>
      {state === 'unreachable' && !isSecureContext && (
        <p className="bench-sending">
          {say(
            'Over plain http this page can’t be opened again while Stonetone does not answer: leave it open.',
          )}
        </p>
      )}
    </>
  );
}

function heldWords(heldSince: number): string {
  return say(
    'Stonetone does not answer. This is as this device heard it last, {heard}: go on, it is sent later.',
    {
      heard: momentText(new Date(heldSince).toISOString()),
    },
  );
}

function sendingWords({ unsent, state, kept }: Sending): string {
  const count = unsent.length;
  if (kept === 'no')
    return say('{count} not sent yet, and this browser can’t keep them: leave the page open.', { count });
  if (kept === 'not yet')
    return say('{count} not sent yet. This browser is still writing down the last one.', { count });
  switch (state) {
    case 'refused':
      return say('{count} not sent yet: Stonetone does not take it. Kept here; load the page again.', {
        count,
      });
    case 'unreachable':
      return say('{count} not sent yet. Kept here, sent in order later: go on.', { count });
    case 'well':
      return say('{count} not sent yet.', { count });
    default:
      return state satisfies never;
  }
}
