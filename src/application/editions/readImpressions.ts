import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EditionReadings } from '../../records/editionReadings.ts';
import type { PullEntry } from '../../records/pullTones.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { ledgerState } from '../../studio/editions/ledgerState.ts';
import { type PullEntryParts, pullEntryOf } from '../pulls/pullEntryOf.ts';
import { noSuchEdition } from './findEditions.ts';

type Parts = PullEntryParts & {
  readonly store: Pick<KeptRecords, 'editions' | 'ledgers' | 'pulls' | 'pullMeasurings'>;
};

/** The photographs of an edition's impressions with what was read from them, beside the approved pull's; or `not-found`. */
export async function readImpressions(parts: Parts, id: string): Promise<Result<EditionReadings>> {
  const { store } = parts;
  const edition = await store.editions.find(id);
  if (edition === null) return fail(noSuchEdition());
  const { impressions } = ledgerState(await store.ledgers.entries(id), new Date(0));
  const pulls = await store.pulls.impressionsOf({ edition: id });
  const shown: { impression: string; n: number; pull: PullEntry }[] = [];
  for (const { id: impression, n, at, photographs } of impressions) {
    const pull = pulls.find((one) => one.impression!.id === impression);
    if (!pull || photographs.length === 0) continue;
    const counting = pull.photographs.filter(({ photograph }) => photographs.includes(photograph));
    // the numbers move where an earlier impression is taken back
    const counted = { ...pull, number: n, madeAt: at, photographs: counting };
    shown.push({ impression, n, pull: await pullEntryOf(parts, store, counted) });
  }
  const approved = edition.approvalPullId === null ? null : await store.pulls.find(edition.approvalPullId);
  const approval = approved && (await pullEntryOf(parts, store, approved));
  return ok({ approval, impressions: shown });
}
