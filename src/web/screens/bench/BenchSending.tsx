import type { OutboxView } from '../../managers/bench/runOutbox.ts';

/** Whatever it is that waits. */
type Sending = Pick<OutboxView, 'state' | 'kept'> & { readonly unsent: { readonly length: number } };

/** How much is not sent yet, and what becomes of it; unseen while all goes through. */
export function BenchSending({ outbox }: { outbox: Sending }) {
  const { unsent, state } = outbox;
  const shown = unsent.length > 1 || (unsent.length > 0 && state !== 'well');
  return (
    <p role="status" className={shown ? 'bench-sending' : 'unseen'}>
      {shown ? sendingWords(outbox) : 'All is sent and kept.'}
    </p>
  );
}

function sendingWords({ unsent, state, kept }: Sending): string {
  const count = `${unsent.length} not sent yet`;
  if (!kept) return `${count}, and this browser can’t keep them: leave the page open.`;
  switch (state) {
    case 'refused':
      return `${count}: Stonetone does not take it. Kept here; load the page again.`;
    case 'unreachable':
      return `${count}. Kept here, sent in order later: go on.`;
    case 'well':
      return `${count}.`;
    default:
      return state satisfies never;
  }
}
