import type { FastifyReply } from 'fastify';

/** A signal that is aborted when whoever asked goes away before the answer is out. */
export function whenGone(reply: Pick<FastifyReply, 'raw'>): AbortSignal {
  const gone = new AbortController();
  reply.raw.once('close', () => {
    if (!reply.raw.writableEnded) gone.abort();
  });
  return gone.signal;
}
