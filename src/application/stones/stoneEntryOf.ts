import type { KeptStone, StoneEntry } from '../../records/stoneEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { levelVerdict } from '../../studio/stones/levelVerdict.ts';
import { stoneMassKg } from '../../studio/stones/stoneMass.ts';

/**
 * A stone whole: what is kept, its mass and level judged by the last reading, and the works on it. A reading from before
 * a work was grained away tells nothing of the face as it is now.
 */
export async function stoneEntryOf(
  records: Pick<KeptRecords, 'works' | 'runs'>,
  stone: KeptStone,
): Promise<StoneEntry> {
  const lastReading = stone.straightedge.toSorted((a, b) => Date.parse(a.at) - Date.parse(b.at)).at(-1);
  const grainedAway = await records.runs.grainedAwayAt(stone.id);
  const outdated =
    lastReading !== undefined && grainedAway !== null && Date.parse(lastReading.at) < Date.parse(grainedAway);
  const works = await records.works.onStone(stone.id);
  return {
    ...stone,
    massKg: stoneMassKg(stone),
    verdict: levelVerdict(
      outdated ? 'before graining' : (lastReading?.gapMm ?? null),
      stone.cornerThicknessMm,
    ),
    works: works.map(({ id, title, stage }) => ({ id, title, stage })),
  };
}
