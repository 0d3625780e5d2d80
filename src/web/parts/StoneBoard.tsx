import './StoneBoard.css';
import {
  type KeyboardEvent,
  type PointerEvent,
  type ReactNode,
  useEffect,
  useMemo,
  useReducer,
  useRef,
} from 'react';
import type { Point } from '../../science/geometry/point.ts';
import { BoardHand, type BoardUser } from '../managers/boardHand.ts';
import type { LinkedView } from '../managers/linkedView.ts';
import { say } from '../words/say.ts';

/** What a board shows, handed to whoever draws on it. */
export interface BoardView {
  readonly view: LinkedView;
  readonly areaPx: Point;
}

/**
 * The stone seen from above, on the bed of the press: moved and brought nearer by mouse, fingers and keys.
 * `under` lies beneath the marks (a photograph), `marks` is SVG in screen px, `foot` stands below.
 */
export function StoneBoard({
  stoneMm,
  label,
  user = null,
  place = null,
  onKey,
  under,
  marks,
  foot,
}: {
  stoneMm: Point;
  label: string;
  user?: BoardUser | null;
  /** A place that must be in sight, such as the point in hand. */
  place?: Point | null;
  /** @returns whether the key was used. */
  onKey?: (event: KeyboardEvent, board: BoardHand) => boolean;
  under?: (board: BoardView) => ReactNode;
  marks: (board: BoardView) => ReactNode;
  foot?: ReactNode;
}) {
  const area = useRef<HTMLDivElement>(null);
  const [, redraw] = useReducer((count: number) => count + 1, 0);
  const [width, height] = stoneMm;
  const board = useMemo(() => new BoardHand([width, height], redraw), [width, height]);
  board.user = user;
  useSize(area, board);
  useWheel(area, board);
  const [x, y] = place ?? [null, null];
  useEffect(() => {
    if (x !== null && y !== null) board.show([x, y]);
  }, [board, x, y]);

  const at = (event: PointerEvent): Point => {
    const box = area.current!.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const coarse = (event: PointerEvent) => event.pointerType === 'touch';
  const shown: BoardView = { view: board.view, areaPx: board.areaPx };
  return (
    <div className="stone-board">
      <div
        ref={area}
        className="stone-board-area"
        role="application"
        aria-label={label}
        aria-describedby="stone-board-keys"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the board is worked by keys
        tabIndex={0}
        onPointerDown={(event) => {
          area.current!.setPointerCapture(event.pointerId);
          area.current!.focus({ preventScroll: true });
          event.preventDefault();
          board.down(event.pointerId, at(event), coarse(event), event.button === 0);
        }}
        onPointerMove={(event) => board.move(event.pointerId, at(event), coarse(event))}
        onPointerUp={(event) => board.up(event.pointerId)}
        onPointerCancel={(event) => board.up(event.pointerId, true)}
        onContextMenu={(event) => event.preventDefault()}
        onKeyDown={(event) => {
          if (!onKey?.(event, board)) return;
          event.preventDefault();
          event.stopPropagation();
        }}
      >
        {under?.(shown)}
        <svg aria-hidden="true">{marks(shown)}</svg>
      </div>
      <div className="stone-board-foot">
        <div className="stone-board-view">
          <button type="button" onClick={() => board.zoom(1.6)}>
            {say('Closer')}
          </button>
          <button type="button" onClick={() => board.zoom(1 / 1.6)}>
            {say('Farther')}
          </button>
          <button type="button" onClick={() => board.whole()}>
            {say('Whole')}
          </button>
        </div>
        {foot}
      </div>
    </div>
  );
}

function useSize(area: React.RefObject<HTMLDivElement | null>, board: BoardHand): void {
  useEffect(() => {
    const observer = new ResizeObserver(([entry]) =>
      board.resize([entry!.contentRect.width, entry!.contentRect.height]),
    );
    observer.observe(area.current!);
    return () => observer.disconnect();
  }, [area, board]);
}

/** React listens to the wheel passively; the page must not scroll while one comes closer. */
function useWheel(area: React.RefObject<HTMLDivElement | null>, board: BoardHand): void {
  useEffect(() => {
    const element = area.current!;
    const wheel = (event: WheelEvent) => {
      if (!event.ctrlKey && !element.contains(document.activeElement)) return;
      event.preventDefault();
      const box = element.getBoundingClientRect();
      board.zoom(Math.exp(-event.deltaY * 0.0015), [event.clientX - box.left, event.clientY - box.top]);
    };
    element.addEventListener('wheel', wheel, { passive: false });
    return () => element.removeEventListener('wheel', wheel);
  }, [area, board]);
}
