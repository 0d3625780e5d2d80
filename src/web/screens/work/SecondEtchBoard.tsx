import { useMemo } from 'react';
import type { MapArea } from '../../../paper/charts/etchMap/mapAreas.ts';
import type { KeptSecondEtch } from '../../../records/keptPlan.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { signedArea } from '../../../science/geometry/polygon.ts';
import { groundId } from '../../../studio/etch/planAreas.ts';
import { groundLetter, zoneLetter } from '../../../studio/etch/zoneLetters.ts';
import { wholeView } from '../../managers/linkedView.ts';
import { EtchMarks } from '../../parts/EtchMarks.tsx';
import { StoneBoard } from '../../parts/StoneBoard.tsx';
import { StoneFace } from '../../parts/StoneFace.tsx';
import { ZoneMarks } from '../../parts/ZoneMarks.tsx';
import type { WorkDesk } from './useWorkDesk.ts';
import { viewKey } from './viewKey.ts';

const nothing: ReadonlySet<string> = new Set();

/** The stone with the strengths of its second etch; with its bare zones as long as none is planned. */
export function SecondEtchBoard({
  desk: { work, state },
  last,
}: {
  desk: WorkDesk;
  last: KeptSecondEtch | null;
}) {
  const { widthMm, heightMm } = work.stone;
  const stoneMm: Point = useMemo(() => [widthMm, heightMm], [widthMm, heightMm]);
  const areas = useMemo(() => (last ? secondAreas(work, last) : []), [work, last]);
  return (
    <StoneBoard
      stoneMm={stoneMm}
      label={last ? `${work.stone.name} from above: the second etch` : `${work.stone.name} from above`}
      onKey={viewKey}
      marks={({ view, areaPx }) => (
        <>
          <StoneFace
            view={view}
            stoneMm={stoneMm}
            head={work.head}
            rectangle={null}
            bare={!last}
            borders={false}
          />
          {last ? (
            <EtchMarks
              view={view}
              wholePxPerMm={wholeView(stoneMm, areaPx, 28).pxPerMm}
              stoneMm={stoneMm}
              areas={areas}
              picked={null}
            />
          ) : (
            <ZoneMarks view={view} state={{ ...state, picked: null }} faulty={nothing} />
          )}
        </>
      )}
      foot={
        <p className="board-words" id="stone-board-keys">
          As seen on the stone. Arrow keys move it, plus and minus bring it closer and farther.
        </p>
      }
    />
  );
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
