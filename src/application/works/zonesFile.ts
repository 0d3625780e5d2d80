import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Work, WorkZone } from '../../records/work.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import type { Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { refused, type Saved, type SavingParts } from '../saving.ts';
import { saveWork } from './changeWork.ts';
import { noSuchWork } from './findWork.ts';

/** The zones of a work as zones.json: mm from the top left of the work rectangle, or of the stone where there is none. */
export async function exportZones(
  { store }: { readonly store: Pick<KeptRecords, 'works'> },
  id: string,
): Promise<Result<readonly Zone[]>> {
  const work = await store.works.find(id);
  if (work === null) return fail(noSuchWork());
  const [x, y] = originOf(work);
  return ok(
    work.zones.map(({ tone: _, ...zone }) => ({ ...zone, polygonMm: moved(zone.polygonMm, -x, -y) })),
  );
}

/**
 * Takes zones.json in: it replaces the zones of a work. A zone that comes back with its id and outline keeps its tone.
 * @returns the faults of `changeWork`
 */
export function importZones(
  parts: Pick<SavingParts, 'store' | 'now'>,
  id: string,
  { version, zones }: { readonly version: number; readonly zones: readonly Zone[] },
): Promise<Saved<WorkEntry>> {
  return saveWork(parts, id, version, (kept) => {
    if (kept.putBy) return refused(failure('put-by', { what: `The work ${kept.title}` }));
    const [x, y] = originOf(kept);
    const placed = zones.map((zone) => ({ ...zone, polygonMm: moved(zone.polygonMm, x, y) }));
    return ok({ ...kept, zones: placed.map((zone) => ({ ...zone, tone: toneOf(zone, kept.zones) })) });
  });
}

function originOf({ rectangle }: Work): Point {
  return rectangle?.offsetMm ?? [0, 0];
}

/** Moved and rounded to a thousandth, which takes away binary dust and is far below any hand. */
function moved(outline: readonly Point[], x: number, y: number): readonly Point[] {
  const thousandths = (mm: number) => Math.round(mm * 1000) / 1000;
  return outline.map((point) => [thousandths(point[0] + x), thousandths(point[1] + y)]);
}

function toneOf(zone: Zone, before: readonly WorkZone[]): WorkZone['tone'] {
  const same = before.find(({ id }) => id === zone.id);
  const outline = (polygonMm: readonly Point[]) => JSON.stringify(moved(polygonMm, 0, 0));
  return same && outline(same.polygonMm) === outline(zone.polygonMm) ? same.tone : null;
}
