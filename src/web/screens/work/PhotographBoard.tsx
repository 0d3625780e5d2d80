import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { AttachedPhotograph } from '../../../records/attachedPhotograph.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { openPhotograph } from '../../client/photographs.ts';
import { markedPlace } from '../../managers/photographPlane.ts';
import { StoneBoard } from '../../parts/StoneBoard.tsx';
import { StoneFace } from '../../parts/StoneFace.tsx';
import { say } from '../../words/say.ts';
import { BoardMoves } from './BoardMoves.tsx';
import { PhotographUnder } from './PhotographUnder.tsx';
import type { WorkDesk } from './useWorkDesk.ts';
import { viewKey } from './viewKey.ts';

/** One photograph straightened onto the stone; the bare stone where it has no marks. */
export function PhotographBoard({
  desk: { work },
  shown,
}: {
  desk: WorkDesk;
  shown: AttachedPhotograph | null;
}) {
  const { widthMm, heightMm } = work.stone;
  const stoneMm: Point = useMemo(() => [widthMm, heightMm], [widthMm, heightMm]);
  const found = useQuery({
    queryKey: ['photograph', shown?.photograph],
    queryFn: () => openPhotograph(shown!.photograph),
    enabled: shown !== null,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const marked = shown && markedPlace(shown.corners, stoneMm, work.rectangle);
  const laid = found.data && marked ? { photograph: found.data, marked } : null;
  return (
    <StoneBoard
      stoneMm={stoneMm}
      label={
        laid
          ? say('{stone} from above, as photographed', { stone: work.stone.name })
          : say('{stone} from above', { stone: work.stone.name })
      }
      onKey={viewKey}
      under={(board) => <PhotographUnder shown={{ laid }} {...board} />}
      marks={({ view }) => (
        <StoneFace
          view={view}
          stoneMm={stoneMm}
          head={work.head}
          rectangle={work.rectangle}
          bare={laid === null}
          borders={false}
        />
      )}
      foot={
        <p className="board-words" id="stone-board-keys">
          {laid ? (
            <>
              {say('Straightened by its four marks, as on the stone.')} <BoardMoves />
            </>
          ) : (
            say('A photograph with its four marks set lies here, straightened.')
          )}
        </p>
      }
    />
  );
}
