import type { ServerResponse } from 'node:http';
import type { RunAnnouncement } from '../../application/bench/logging.ts';
import type { ComparisonEvent } from '../../application/measuring/comparisonEvents.ts';
import type { Services } from '../../application/openServices.ts';
import { failure } from '../../foundation/failure.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { eventListenersAllowed } from '../limits.ts';

const heartbeatMs = 15_000;
/** A page that does not read is let go once this much waits for it, bytes; it comes back by itself. */
const backlogAllowed = 1e6;

/**
 * The one event stream that all pages of a browser share: event `comparison`, data `{id, state, progress}`, event
 * `run`, data `{runId, workId, event}`, event `pull`, data `{workId, pullId, photograph, state, progress}`, event
 * `ledger`, data `{editionId, entry}`, and event `work`, data `{id, share}`, how far is what somebody waits for by that id.
 * Nothing is repeated: a page that (re)connects reads the list anew.
 */
export function addEventRoutes(app: App, services: Services): void {
  const listeners = new Set<ServerResponse>();

  function tell(text: string): void {
    for (const response of listeners) {
      if (response.writableLength > backlogAllowed) response.destroy();
      else response.write(text);
    }
  }

  const unsubscribe = services.events.subscribe(({ id, state, progress }: ComparisonEvent) =>
    tell(`event: comparison\ndata: ${JSON.stringify({ id, state, progress })}\n\n`),
  );
  const unsubscribeRuns = services.runEvents.subscribe(({ runId, workId, event }: RunAnnouncement) =>
    tell(`event: run\ndata: ${JSON.stringify({ runId, workId, event })}\n\n`),
  );
  const unsubscribePulls = services.pullEvents.subscribe((event) =>
    tell(`event: pull\ndata: ${JSON.stringify(event)}\n\n`),
  );
  const unsubscribeLedgers = services.ledgerEvents.subscribe((logged) =>
    tell(`event: ledger\ndata: ${JSON.stringify(logged)}\n\n`),
  );
  const unsubscribeWork = services.workEvents.subscribe((told) =>
    tell(`event: work\ndata: ${JSON.stringify(told)}\n\n`),
  );
  const heartbeat = setInterval(() => tell(': still here\n\n'), heartbeatMs);

  app.addHook('preClose', async () => {
    unsubscribe();
    unsubscribeRuns();
    unsubscribePulls();
    unsubscribeLedgers();
    unsubscribeWork();
    clearInterval(heartbeat);
    for (const response of listeners) response.end();
  });

  app.get(
    '/api/events',
    {
      exposeHeadRoute: false,
      schema: { tags: ['events'], summary: 'Changes as they happen (server-sent events)' },
    },
    async (_request, reply) => {
      if (listeners.size >= eventListenersAllowed) return sendFailure(reply, failure('listeners-too-many'));
      reply.hijack();
      const response = reply.raw;
      response.writeHead(200, {
        ...(reply.getHeaders() as Record<string, string>),
        'content-type': 'text/event-stream; charset=utf-8',
        'cache-control': 'no-store',
        'x-accel-buffering': 'no',
      });
      response.write('retry: 2000\n\n');
      listeners.add(response);
      response.on('close', () => listeners.delete(response));
      return reply;
    },
  );
}
