import type { QueryClient } from '@tanstack/react-query';
import { enterPhotograph } from '../../client/enterPhotograph.ts';
import { addPhotograph } from '../../client/photographs.ts';
import { FailedRequest } from '../../client/shownFailure.ts';
import { newClientId } from '../../managers/bench/clientIds.ts';
import type { PhotographBelongs } from '../../managers/held/heldPhotograph.ts';
import { photographShelf } from '../../managers/held/photographShelf.ts';
import { PhotographsToSend } from '../../managers/held/photographsToSend.ts';
import { ledgerToSendOf } from '../rack/runToSendOf.ts';

const ofPage = new WeakMap<QueryClient, PhotographsToSend>();

/** What would be said of any other photograph too. */
const forAll: ReadonlySet<string> = new Set([
  'not-let-in',
  'uploads-too-many',
  'uploads-unfinished',
  'storage-full',
  'internal',
]);

/** The photographs that this browser holds until the server has them; one to a page. */
export function heldPhotographs(queries: QueryClient): PhotographsToSend {
  const known = ofPage.get(queries);
  if (known) return known;
  const toSend = new PhotographsToSend({
    shelf: photographShelf,
    send: async ({ blob, fileName }, onShare) =>
      (await addPhotograph(blob, onShare, { name: fileName, tries: 2 })).id,
    enter: async (photograph, kept) => {
      const { belongs } = photograph;
      // the print itself is logged before its photograph is
      if (belongs.to === 'impression') await bringLedger(queries, belongs.editionId);
      return enterPhotograph(queries, photograph, kept);
    },
    refusalOf: (thrown) =>
      thrown instanceof FailedRequest
        ? {
            message: thrown.failure.message,
            remedy: thrown.failure.remedy,
            forAll: forAll.has(thrown.failure.code),
          }
        : null,
  });
  ofPage.set(queries, toSend);
  return toSend;
}

async function bringLedger(queries: QueryClient, editionId: string): Promise<void> {
  const toSend = ledgerToSendOf(queries, editionId);
  await toSend.drain();
  if (toSend.current().unsent.length > 0) throw new TypeError('the ledger is not sent yet');
}

/** Holds a photograph that was taken now; resolves with its id on this device. */
export async function holdPhotograph(
  queries: QueryClient,
  file: File,
  shows: string,
  belongs: PhotographBelongs,
): Promise<string> {
  const id = newClientId();
  await heldPhotographs(queries).add({
    id,
    blob: file,
    fileName: file.name || 'pasted.png',
    shows,
    takenAt: new Date().toISOString(),
    belongs,
    kept: null,
  });
  return id;
}
