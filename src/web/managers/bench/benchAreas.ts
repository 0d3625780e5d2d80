import { type MapArea, mapAreas } from '../../../paper/charts/etchMap/mapAreas.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { groundId } from '../../../studio/etch/planAreas.ts';
import { groundLetter, zoneLetter } from '../../../studio/etch/zoneLetters.ts';

/** What the bench draws on the stone: as planned where there is a plan, else the zones as drawn; the ground first. */
export function benchAreas(work: WorkEntry, plan: KeptPlan | null): readonly MapArea[] {
  if (plan) return mapAreas(plan, false);
  const { widthMm, heightMm } = work.stone;
  const bare = { strength: null, words: [] };
  return [
    {
      id: groundId,
      letter: groundLetter,
      rings: [
        [
          [0, 0],
          [widthMm, 0],
          [widthMm, heightMm],
          [0, heightMm],
        ],
      ],
      ...bare,
    },
    ...work.zones.map(({ id, polygonMm }, index) => ({
      id,
      letter: zoneLetter(index),
      rings: [polygonMm],
      ...bare,
    })),
  ];
}
