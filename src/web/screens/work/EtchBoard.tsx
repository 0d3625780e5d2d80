import { useMemo } from 'react';
import { mapAreas } from '../../../paper/charts/etchMap/mapAreas.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { wholeView } from '../../managers/linkedView.ts';
import { EtchMarks } from '../../parts/EtchMarks.tsx';
import { StoneBoard } from '../../parts/StoneBoard.tsx';
import { StoneFace } from '../../parts/StoneFace.tsx';
import { ZoneMarks } from '../../parts/ZoneMarks.tsx';
import type { WorkDesk } from './useWorkDesk.ts';
import { viewKey } from './viewKey.ts';

const nothing: ReadonlySet<string> = new Set();

/** The stone with its etch map; with its bare zones as long as nothing is planned. */
export function EtchBoard({
  desk: { work, state },
  kept,
  pointed,
}: {
  desk: WorkDesk;
  kept: KeptPlan | null;
  pointed: string | null;
}) {
  const { widthMm, heightMm } = kept?.request.stone ?? work.stone;
  const stoneMm: Point = useMemo(() => [widthMm, heightMm], [widthMm, heightMm]);
  const areas = useMemo(() => (kept ? mapAreas(kept, false) : []), [kept]);
  return (
    <StoneBoard
      stoneMm={stoneMm}
      label={kept ? `${work.stone.name} from above: the etch map` : `${work.stone.name} from above`}
      onKey={viewKey}
      marks={({ view, areaPx }) => (
        <>
          <StoneFace
            view={view}
            stoneMm={stoneMm}
            head={work.head}
            rectangle={null}
            bare={!kept}
            borders={false}
          />
          {kept ? (
            <EtchMarks
              view={view}
              wholePxPerMm={wholeView(stoneMm, areaPx, 28).pxPerMm}
              stoneMm={stoneMm}
              areas={areas}
              picked={pointed}
            />
          ) : (
            <ZoneMarks view={view} state={{ ...state, picked: null }} faulty={nothing} />
          )}
        </>
      )}
      foot={
        <p className="board-words" id="stone-board-keys">
          {kept
            ? 'As seen on the stone; hatched by strength as on paper, the denser the stronger. Arrow keys move it.'
            : 'As seen on the stone. Arrow keys move it, plus and minus bring it closer and farther.'}
        </p>
      }
    />
  );
}
