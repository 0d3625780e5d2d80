import { type Failure, failure } from '../foundation/failure.ts';
import type { AttachedPhotograph } from '../records/attachedPhotograph.ts';
import type { KeptRecords } from '../store/keptRecords.ts';
import { validateCorners } from './comparison/validateCorners.ts';

/** Judges attached photographs: each is kept here, and corners lie on it. Null when usable, else the first fault. */
export async function judgePhotographs(
  records: Pick<KeptRecords, 'photographs'>,
  attached: readonly AttachedPhotograph[],
): Promise<Failure | null> {
  for (const [index, { photograph, state, corners }] of attached.entries()) {
    const path = `photographs[${index}]`;
    const kept = await records.photographs.find(photograph);
    if (kept === null) return failure('photograph-unknown', { use: state }, `${path}.photograph`);
    if (corners === null) continue;
    const photo = state === 'print' ? 'proof' : 'stone';
    const fault = validateCorners(corners.px, photo, kept.widthPx, kept.heightPx);
    if (fault) return { ...fault, path: fault.path!.replace(`${photo}.corners`, `${path}.corners.px`) };
  }
  return null;
}
