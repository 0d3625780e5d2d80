import { ok, type Result } from '../../foundation/result.ts';
import type { PlanRequest, PlanZone } from '../../records/etch.ts';
import type { Work } from '../../records/work.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { spansDeposits } from '../../studio/etch/chooseRow.ts';
import type { PictureDesk } from '../pictures/pictureDesk.ts';
import { placeOnPhotograph } from '../zoneTones/measureZoneTones.ts';

export interface SplitParts {
  readonly store: Pick<KeptRecords, 'stones' | 'photographs'>;
  readonly desk: Pick<PictureDesk, 'tonesOf'>;
}

/**
 * Splits the washes of a request that span deposits by their tone on an attached photograph. Where none is named, or no
 * wash spans, or nothing could be read, the request stays as it is: a wash is then planned by its light part.
 * @returns the faults of `placeOnPhotograph` with the path `splitFrom`, or of reading the photograph
 */
export async function splitByTone(
  { store, desk }: SplitParts,
  work: Work,
  request: PlanRequest,
  photographId: string | null,
): Promise<Result<PlanRequest>> {
  if (photographId === null) return ok(request);
  const asked = { photograph: photographId, cornersPx: null, of: null };
  const placed = await placeOnPhotograph(store, work, asked, 'splitFrom');
  if (!placed.ok) return { ok: false, error: { ...placed.error, path: 'splitFrom' } };
  const washes = request.zones.filter((zone) => spansDeposits(zone, request.ownMedia)).map(({ id }) => id);
  if (washes.length === 0) return ok(request);
  const read = await desk.tonesOf(placed.value.photograph, placed.value.place, washes);
  if (!read.ok) return read;
  const { splits } = read.value;
  const zones = request.zones.map((zone): PlanZone => {
    const split = splits.get(zone.id);
    return split && split.parts.length > 0 ? { ...zone, split } : zone;
  });
  return ok({ ...request, zones });
}
