import type { Edition } from '../../records/edition.ts';
import type { LedgerEntry } from '../../records/ledger.ts';
import type { Pull, PullPhotograph } from '../../records/pull.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { ledgerState } from '../../studio/editions/ledgerState.ts';
import type { LoggedPhotograph } from '../../studio/editions/photographLogged.ts';

type Records = Pick<KeptRecords, 'pulls' | 'pullMeasurings' | 'ledgers'>;

/**
 * Adds a photograph to the pull that an impression is, which is begun with its first; it waits to be read from then on.
 * Named once more, the photograph stays one, and its age is what was said last.
 */
export async function keepImpressionPhotograph(
  records: Records,
  edition: Edition,
  { impression, photograph, takenAt, ageMinutes }: LoggedPhotograph,
  { id, at }: { readonly id: string; readonly at: string },
): Promise<void> {
  const { pulls, pullMeasurings, ledgers } = records;
  const kept = await pulls.ofImpression(edition.id, impression);
  const same = kept?.photographs.find((one) => one.photograph === photograph);
  const shown: PullPhotograph = same
    ? { ...same, takenAt, ageMinutes }
    : { photograph, takenAt, ageMinutes, corners: null, chips: [] };
  const others = kept?.photographs.filter((one) => one !== same) ?? [];
  const pull: Pull = kept
    ? { ...kept, photographs: [...others, shown], version: kept.version + 1, changedAt: at }
    : { ...pullOf(edition, impression, await ledgers.entries(edition.id), { id, at }), photographs: [shown] };
  if (kept) await pulls.save(pull, kept.version);
  else await pulls.add(pull);
  const all = pull.photographs.map((one) => one.photograph);
  await pullMeasurings.attach(pull.id, all, at);
}

/** An impression that this ledger does not hold yet, being still on another device, is known by its photograph alone. */
function pullOf(
  edition: Edition,
  impression: string,
  entries: readonly LedgerEntry[],
  { id, at }: { readonly id: string; readonly at: string },
): Omit<Pull, 'photographs'> {
  const { impressions } = ledgerState(entries, new Date(at));
  const known = impressions.find((one) => one.id === impression);
  const { paper, ink } = edition;
  return {
    id,
    workId: edition.workId,
    impression: { edition: edition.id, id: impression },
    number: known?.n ?? impressions.length + 1,
    kind: 'edition',
    paper: { id: null, words: paper.name === '' ? 'not recorded' : paper.name },
    damp: paper.damped === 'unknown' ? null : paper.damped === 'yes',
    madeAt: known?.at ?? null,
    ink: ink === '' ? null : { id: null, words: ink },
    charges: null,
    passes: null,
    pressureEighths: null,
    packing: null,
    roller: null,
    who: known?.actor ?? null,
    eye: null,
    faults: [],
    remarks: '',
    putBy: false,
    version: 1,
    createdAt: at,
    changedAt: at,
    sample: edition.sample,
  };
}
