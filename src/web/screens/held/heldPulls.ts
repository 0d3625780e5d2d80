import type { QueryClient } from '@tanstack/react-query';
import { addPull, holdPull, proofsKey } from '../../client/pulls.ts';
import { FailedRequest } from '../../client/shownFailure.ts';
import { heldPullShelf } from '../../managers/held/heldPullShelf.ts';
import { photographShelf } from '../../managers/held/photographShelf.ts';
import { PullsToSend } from '../../managers/held/pullsToSend.ts';
import { heldPhotographs } from './heldPhotographs.ts';

const ofPage = new WeakMap<QueryClient, PullsToSend>();

/** What would be said of any other pull too. */
const forAll: ReadonlySet<string> = new Set(['not-let-in', 'storage-full', 'internal']);

/** The pulls that this browser holds until the server has them; one to a page. */
export function heldPulls(queries: QueryClient): PullsToSend {
  const known = ofPage.get(queries);
  if (known) return known;
  const photographs = heldPhotographs(queries);
  const toSend = new PullsToSend({
    shelf: heldPullShelf,
    photographs: async () => {
      const lying = new Map((await photographShelf.read()).map((one) => [one.id, one]));
      // the page may know of one that the browser had no room for
      for (const { photograph } of photographs.current().waiting) lying.set(photograph.id, photograph);
      return [...lying.values()];
    },
    sendAgain: (id) => photographs.sendAgain(id),
    send: async ({ workId, typed }, draft) =>
      holdPull(queries, await addPull(workId, { ...draft, id: typed.id })),
    refusalOf: (thrown) =>
      thrown instanceof FailedRequest
        ? {
            ...thrown.failure,
            forAll: forAll.has(thrown.failure.code) || thrown.failure.code.startsWith('status-'),
          }
        : null,
    onGone: (ids) => photographs.forget(ids),
    onGoneElsewhere: (pulls) => {
      for (const { workId } of pulls) void queries.invalidateQueries({ queryKey: proofsKey(workId) });
    },
  });
  ofPage.set(queries, toSend);
  return toSend;
}
