import { type Failure, failure } from '../../foundation/failure.ts';
import type { TestPhotograph, TestStoneDraft } from '../../records/testStone.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { validateCorners } from '../comparison/validateCorners.ts';
import { validateProportions, validateSize } from '../comparison/validateSize.ts';
import { validateZones } from '../comparison/validateZones.ts';
import { patchZones } from './patchZones.ts';

/** As many zones as a comparison takes. */
export const mostPatches = 500;

type Records = Pick<KeptRecords, 'stones' | 'works' | 'photographs'>;

/** Judges a test stone before it is kept, as its reading would. Null when usable, else the first fault with its path. */
export async function judgeTestStone(records: Records, draft: TestStoneDraft): Promise<Failure | null> {
  return judgePatches(draft) ?? (await judgeReferences(records, draft)) ?? judgePhotographs(records, draft);
}

/** The same of what needs no records: size and patches. */
export function judgePatches({
  sizeMm,
  patches,
  factors,
}: Pick<TestStoneDraft, 'sizeMm' | 'patches' | 'factors'>): Failure | null {
  if (patches.length > mostPatches)
    return failure('patches-too-many', { count: patches.length, most: mostPatches }, 'patches');
  const size = validateSize(sizeMm);
  if (size) return size;
  const fault = validateZones(patchZones(patches, factors), sizeMm);
  return fault && { ...fault, path: (fault.path ?? '').replace('zones', 'patches') };
}

async function judgeReferences(records: Records, draft: TestStoneDraft): Promise<Failure | null> {
  const { stoneId, workId } = draft;
  if (stoneId !== null && (await records.stones.find(stoneId)) === null)
    return failure('reference-unknown', { what: 'stone', id: stoneId }, 'stoneId');
  if (workId !== null && (await records.works.find(workId)) === null)
    return failure('reference-unknown', { what: 'work', id: workId }, 'workId');
  return null;
}

async function judgePhotographs(
  records: Records,
  { drawn, prints, sizeMm, judgedBy }: TestStoneDraft,
): Promise<Failure | null> {
  const fault = drawn && (await judgePhotograph(records, drawn, 'stone', 'drawn'));
  if (fault) return fault;
  if (drawn?.corners) {
    const proportions = validateProportions(sizeMm, drawn.corners);
    if (proportions) return proportions;
  }
  for (const [index, print] of prints.entries()) {
    const bad = await judgePhotograph(records, print, 'proof', `prints[${index}]`);
    if (bad) return bad;
    if (print.photograph === drawn?.photograph)
      return failure('photographs-same', {}, `prints[${index}].photograph`);
  }
  if (judgedBy !== null && !prints.some(({ id }) => id === judgedBy))
    return failure('reference-unknown', { what: 'print', id: judgedBy }, 'judgedBy');
  return null;
}

async function judgePhotograph(
  { photographs }: Pick<Records, 'photographs'>,
  shown: TestPhotograph,
  photo: 'stone' | 'proof',
  path: string,
): Promise<Failure | null> {
  for (const field of ['photograph', 'repeat', 'flat'] as const) {
    const id = shown[field];
    if (id !== null && (await photographs.find(id)) === null)
      return failure('photograph-unknown', { use: photo }, `${path}.${field}`);
  }
  const kept = (await photographs.find(shown.photograph))!;
  const fault = shown.corners && validateCorners(shown.corners, photo, kept.widthPx, kept.heightPx);
  return fault && { ...fault, path: (fault.path ?? '').replace(photo, path) };
}
