import { fail, ok, type Result } from '../../foundation/result.ts';
import type { RunEvent } from '../../records/run.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { noSuchRun } from './logging.ts';

/** Few enough that reading one page holds nobody up. */
const eventsEach = 1000;

interface Asked {
  /** Only events with a higher sequence number; 0 for all. */
  readonly after: number;
  /** null: all that follow. */
  readonly limit: number | null;
}

/** The events of a run in order, page by page, so that others are served in between; `not-found` without the run. */
export async function readEvents(
  { store }: { readonly store: Pick<KeptRecords, 'runs'> },
  runId: string,
  { after, limit }: Asked,
): Promise<Result<AsyncGenerator<readonly RunEvent[]>>> {
  if ((await store.runs.find(runId)) === null) return fail(noSuchRun());
  return ok(pages());

  async function* pages(): AsyncGenerator<readonly RunEvent[]> {
    let left = limit ?? Number.POSITIVE_INFINITY;
    let last = after;
    while (left > 0) {
      const asked = Math.min(left, eventsEach);
      const page = await store.runs.events(runId, { after: last, limit: asked });
      if (page.length > 0) yield page;
      if (page.length < asked) return;
      left -= page.length;
      last = page.at(-1)!.sequence;
    }
  }
}
