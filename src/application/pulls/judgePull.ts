import { type Failure, failure } from '../../foundation/failure.ts';
import type { Pull } from '../../records/pull.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { validateCorners } from '../comparison/validateCorners.ts';

/**
 * Judges a pull before it is kept: no other of its work carries its number, its photographs are kept here, corners lie on
 * them. Null when usable, else the first fault with its path.
 */
export async function judgePull(
  records: Pick<KeptRecords, 'pulls' | 'photographs'>,
  pull: Pull,
): Promise<Failure | null> {
  const same = pull.putBy || pull.impression ? null : await records.pulls.numbered(pull.workId, pull.number);
  if (same !== null && same.id !== pull.id) {
    const next = (await records.pulls.ofWork(pull.workId)).at(-1)!.number + 1;
    return failure('pull-number-taken', { number: pull.number, next }, 'number');
  }
  for (const [index, { photograph, corners }] of pull.photographs.entries()) {
    const path = `photographs[${index}]`;
    const kept = await records.photographs.find(photograph);
    if (kept === null) return failure('photograph-unknown', { use: 'print' }, `${path}.photograph`);
    const fault = corners && validateCorners(corners, 'proof', kept.widthPx, kept.heightPx);
    if (fault) return { ...fault, path: fault.path!.replace('proof.corners', `${path}.corners`) };
  }
  return null;
}
