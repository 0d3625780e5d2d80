import { useQuery } from '@tanstack/react-query';
import type { AttachedPhotograph } from '../../../records/attachedPhotograph.ts';
import type { PhotographEntry } from '../../../records/comparisonEntry.ts';
import type { Work, WorkRectangle } from '../../../records/work.ts';
import { openPhotograph } from '../../client/photographs.ts';
import { markedPlace } from '../../managers/photographPlane.ts';
import { LaidPhotograph } from '../../parts/LaidPhotograph.tsx';
import type { BoardView } from '../../parts/StoneBoard.tsx';

/** A stone, or a rectangle on one, that is drawn upon, with its photographs. */
export interface BoardStone extends Pick<Work, 'photographs'> {
  readonly stone: { readonly name: string; readonly widthMm: number; readonly heightMm: number };
}

/** The photograph that lies under the drawing; `laid` null where none can. */
export interface ShownPhotograph {
  readonly laid: {
    readonly photograph: PhotographEntry;
    readonly marked: NonNullable<ReturnType<typeof markedPlace>>;
  } | null;
}

/** How well each state shows what was drawn; a print or a raking frame never lies under the drawing. */
const shownBefore = ['drawn', 'inked', 'washed-out', 'grained'];

/** The photograph of a work that shows its drawing best, among those whose marks are set; of equals the newest. */
export function bestPhotograph({ photographs }: Pick<Work, 'photographs'>): AttachedPhotograph | null {
  const usable = photographs.filter(({ state, corners }) => corners && shownBefore.includes(state));
  return usable.reduce<AttachedPhotograph | null>(
    (best, photograph) =>
      best && shownBefore.indexOf(best.state) < shownBefore.indexOf(photograph.state) ? best : photograph,
    null,
  );
}

/** Looks up the photograph to lay under the drawing; the bare outline stands until it is here. */
export function useShownPhotograph(work: BoardStone, rectangle: WorkRectangle | null): ShownPhotograph {
  const best = bestPhotograph(work);
  const found = useQuery({
    queryKey: ['photograph', best?.photograph],
    queryFn: () => openPhotograph(best!.photograph),
    enabled: best !== null,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const marked = best && markedPlace(best.corners, [work.stone.widthMm, work.stone.heightMm], rectangle);
  return { laid: found.data && marked ? { photograph: found.data, marked } : null };
}

/** The photograph as it lies on the board. */
export function PhotographUnder({ shown: { laid }, view, areaPx }: { shown: ShownPhotograph } & BoardView) {
  return laid && <LaidPhotograph {...laid} view={view} areaPx={areaPx} />;
}
