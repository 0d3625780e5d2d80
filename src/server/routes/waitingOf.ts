import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import type { Waiting } from '../../application/threads/workInThread.ts';

/** What a request may say so that it hears how far it is. */
export const progressSchema = z
  .string()
  .max(64)
  .optional()
  .describe('An id chosen by who asks: `/api/events` tells by it how far the answer is');

/** Whoever waits for a reply: hears how far it is by the id it chose, and ends the work when it goes away. */
export function waitingOf(
  { workEvents }: Pick<Services, 'workEvents'>,
  reply: Pick<FastifyReply, 'raw'>,
  id: string | undefined,
): Waiting {
  const gone = new AbortController();
  reply.raw.on('close', () => {
    if (!reply.raw.writableFinished) gone.abort();
  });
  return {
    signal: gone.signal,
    progress: (share) => {
      if (id !== undefined) workEvents.announce({ id, share });
    },
  };
}
