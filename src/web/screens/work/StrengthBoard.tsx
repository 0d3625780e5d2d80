import { useMemo } from 'react';
import type { MapArea } from '../../../paper/charts/etchMap/mapAreas.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { wholeView } from '../../managers/linkedView.ts';
import { EtchMarks } from '../../parts/EtchMarks.tsx';
import { StoneBoard } from '../../parts/StoneBoard.tsx';
import { StoneFace } from '../../parts/StoneFace.tsx';
import { ZoneMarks } from '../../parts/ZoneMarks.tsx';
import { say } from '../../words/say.ts';
import { BoardMoves } from './BoardMoves.tsx';
import type { WorkDesk } from './useWorkDesk.ts';
import { viewKey } from './viewKey.ts';

const nothing: ReadonlySet<string> = new Set();

/** The stone with its places by strength of etch; with its bare zones as long as nothing is planned. */
export function StrengthBoard({
  desk: { work, state },
  stone: { widthMm, heightMm },
  etch,
  areas,
  pointed = null,
  words = say('As seen on the stone.'),
}: {
  desk: WorkDesk;
  stone: { readonly widthMm: number; readonly heightMm: number };
  /** What is drawn, such as "the etch map". */
  etch: string;
  /** null: nothing is planned. */
  areas: readonly MapArea[] | null;
  /** The place that is pointed at elsewhere. */
  pointed?: string | null;
  /** What is told below the board. */
  words?: string;
}) {
  const stoneMm: Point = useMemo(() => [widthMm, heightMm], [widthMm, heightMm]);
  const fromAbove = say('{stone} from above', { stone: work.stone.name });
  return (
    <StoneBoard
      stoneMm={stoneMm}
      label={areas ? `${fromAbove}: ${etch}` : fromAbove}
      onKey={viewKey}
      marks={({ view, areaPx }) => (
        <>
          <StoneFace
            view={view}
            stoneMm={stoneMm}
            head={work.head}
            rectangle={null}
            bare={!areas}
            borders={false}
          />
          {areas ? (
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
          {words} <BoardMoves />
        </p>
      }
    />
  );
}
