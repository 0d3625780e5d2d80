import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { seriesTones } from '../../records/proofSeries.ts';
import type { Pull } from '../../records/pull.ts';
import type { Approval, ApprovalInput } from '../../records/workSeries.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { StoredApproval } from '../../store/repositories/seriesRepository.ts';
import { goodToPrint } from '../../studio/proofs/goodToPrint.ts';
import { restsOnApproval } from '../../studio/proofs/restsOnApproval.ts';
import { unplacedTones } from '../../studio/proofs/toneAreas.ts';
import { approvalReading, approvalReadings } from '../../studio/proofs/workSeries.ts';
import type { SavingParts } from '../saving.ts';
import { noSuchWork } from '../works/findWork.ts';
import { readingsOf } from './readingsOf.ts';
import { type ReadSeriesParts, readSeries } from './readSeries.ts';
import { readSeriesSettings } from './seriesSettings.ts';

type Parts = ReadSeriesParts & Pick<SavingParts, 'store' | 'now' | 'newId'>;

/**
 * Gives good to print: three comparable pulls up to the one named lie within the tolerance, none has an open fault, artist
 * and printer have signed. That pull is the approval proof, and the standard from now on.
 * @returns `not-found`, `reference-unknown` for a number that no pull carries, `not-good-to-print` with all that is missing
 */
export async function giveApproval(
  parts: Parts,
  workId: string,
  { pull: number, artist, printer }: ApprovalInput,
): Promise<Result<Approval>> {
  const series = await readSeries(parts, workId);
  if (!series.ok) return series;
  const settings = await readSeriesSettings(parts, workId);
  if (!settings.ok) return settings;
  const pull = await parts.store.pulls.numbered(workId, number);
  if (pull === null) {
    return fail(failure('reference-unknown', { what: 'pull of this work', id: number }, 'pull'));
  }
  const { tolerance } = series.value;
  const readings = approvalReadings(series.value, number);
  const signed = { artist: artist !== '', printer: printer !== '' };
  const reading = approvalReading(series.value, number);
  const unplaced = unplacedTones(settings.value.areas);
  const judged = goodToPrint(readings, tolerance, signed, reading, unplaced);
  const missing = judged.pulls.includes(number)
    ? judged.missing
    : [`Pull ${number} was not read.`, ...judged.missing];
  if (missing.length > 0) {
    return fail(failure('not-good-to-print', { number, why: missing.join(' ') }, 'pull'));
  }
  const shown = series.value.pulls.find(({ id }) => id === pull.id)!;
  const [lights, middles, darks] = seriesTones.map((tone) => shown.tones[tone]?.value ?? null);
  const approval: StoredApproval = {
    id: parts.newId(),
    workId,
    pullId: pull.id,
    pull: number,
    givenAt: parts.now().toISOString(),
    artist,
    printer,
    restsOn: judged.pulls,
    tolerance,
    photograph: shown.how === 'camera' ? await standardOf(parts, pull) : null,
    tones: { lights: lights!, middles: middles!, darks: darks! },
    withdrawn: null,
  };
  return parts.store.decide(async ({ series: kept }) => {
    await kept.addApproval(approval);
    return ok({ ...approval, restsOnIt: [] });
  });
}

/** The first of a pull's photographs that was read. */
async function standardOf(parts: Parts, pull: Pull): Promise<string | null> {
  const read = await readingsOf(parts, [pull]);
  return (
    pull.photographs.find(({ photograph }) => read.get(photograph)?.verdict === 'ok')?.photograph ?? null
  );
}

/** A work's approvals, newest first, withdrawn ones too, each with what rests on it; or `not-found`. */
export async function listApprovals(
  { store }: { readonly store: Pick<KeptRecords, 'works' | 'pulls' | 'series'> },
  workId: string,
): Promise<Result<readonly Approval[]>> {
  if ((await store.works.find(workId)) === null) return fail(noSuchWork());
  const pulls = await store.pulls.ofWork(workId);
  const approvals = await store.series.approvals(workId);
  return ok(approvals.map((approval) => withDependents(approval, pulls)));
}

/**
 * Says that it is no longer good to print; the approval stays in the history, with who said so and why.
 * @returns the approval with what depended on it; `not-found`, or `no-longer-good` where it was before
 */
export async function withdrawApproval(
  parts: Parts,
  workId: string,
  id: string,
  { who, why }: { readonly who: string; readonly why: string },
): Promise<Result<Approval>> {
  const at = parts.now().toISOString();
  return parts.store.decide(async ({ series, pulls }) => {
    const approval = (await series.approvals(workId)).find((one) => one.id === id);
    if (!approval) return fail(failure('not-found', { what: 'such approval of this work' }));
    const withdrawn = { at, who, why };
    if (!(await series.withdraw(id, withdrawn))) {
      return fail(failure('no-longer-good', { number: approval.pull }));
    }
    return ok(withDependents({ ...approval, withdrawn }, await pulls.ofWork(workId)));
  });
}

function withDependents(approval: StoredApproval, pulls: readonly Pull[]): Approval {
  return { ...approval, restsOnIt: restsOnApproval(approval, pulls) };
}
