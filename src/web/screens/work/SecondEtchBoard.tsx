import { useMemo } from 'react';
import type { MapArea } from '../../../paper/charts/etchMap/mapAreas.ts';
import type { KeptSecondEtch } from '../../../records/keptPlan.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { signedArea } from '../../../science/geometry/polygon.ts';
import { groundId } from '../../../studio/etch/planAreas.ts';
import { groundLetter, zoneLetter } from '../../../studio/etch/zoneLetters.ts';
import { say } from '../../words/say.ts';
import { StrengthBoard } from './StrengthBoard.tsx';
import type { WorkDesk } from './useWorkDesk.ts';

/** The stone with the strengths of its second etch; with its bare zones as long as none is planned. */
export function SecondEtchBoard({ desk, last }: { desk: WorkDesk; last: KeptSecondEtch | null }) {
  const { work } = desk;
  const areas = useMemo(() => last && secondAreas(work, last), [work, last]);
  return <StrengthBoard desk={desk} stone={work.stone} etch={say('the second etch')} areas={areas} />;
}

/** The ground, then the zones of the work, large ones first, with the strength of the second etch. */
function secondAreas(work: WorkEntry, last: KeptSecondEtch): MapArea[] {
  const { widthMm, heightMm } = work.stone;
  const strengthOf = (id: string) => last.plan.zones.find((zone) => zone.id === id)?.strength ?? null;
  const zones = work.zones.map(({ id, polygonMm }, index) => ({
    id,
    letter: zoneLetter(index),
    ring: polygonMm,
  }));
  const whole: readonly Point[] = [
    [0, 0],
    [widthMm, 0],
    [widthMm, heightMm],
    [0, heightMm],
  ];
  const large = (ring: readonly Point[]) => Math.abs(signedArea(ring));
  return [
    { id: groundId, letter: groundLetter, ring: whole },
    ...zones.toSorted((a, b) => large(b.ring) - large(a.ring)),
  ].map(({ id, letter, ring }) => ({ id, letter, strength: strengthOf(id), rings: [ring], words: [] }));
}
