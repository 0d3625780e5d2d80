import './StoneFace.css';
import type { Edge } from '../../records/stone.ts';
import type { WorkRectangle } from '../../records/work.ts';
import type { Point } from '../../science/geometry/point.ts';
import { borderRules } from '../../studio/stones/borderCheck.ts';
import { type LinkedView, toScreenPx } from '../managers/linkedView.ts';
import { say } from '../words/say.ts';

/** The stone itself on the board, in screen px: its face, its gum borders, its head, and the work rectangle. */
export function StoneFace({
  view,
  stoneMm,
  head,
  rectangle,
  bare,
  borders = true,
}: {
  view: LinkedView;
  stoneMm: Point;
  /** null: where it lies is not known, or doesn’t matter. */
  head: Edge | null;
  rectangle: WorkRectangle | null;
  /** False where a photograph shows the face. */
  bare: boolean;
  /** Whether the borders that must stay free are drawn. */
  borders?: boolean;
}) {
  const box = (fromMm: Point, sizeMm: Point) => {
    const [x, y] = toScreenPx(view, fromMm);
    return { x, y, width: sizeMm[0] * view.pxPerMm, height: sizeMm[1] * view.pxPerMm };
  };
  const upright = head === 'top' || head === 'bottom';
  const [across, along] = upright
    ? [borderRules.sideMm, borderRules.endMm]
    : [borderRules.endMm, borderRules.sideMm];
  const free = box([across, along], [stoneMm[0] - 2 * across, stoneMm[1] - 2 * along]);
  const whole = box([0, 0], stoneMm);
  const laid = rectangle && box(rectangle.offsetMm, rectangle.sizeMm);
  return (
    <g className="stone-face">
      <rect {...whole} rx="3" className={bare ? 'face bare' : 'face'} />
      {borders && free.width > 0 && free.height > 0 && <rect {...free} className="gum-border" />}
      {laid && <rect {...laid} className="work-rectangle under" />}
      {laid && <rect {...laid} className="work-rectangle" />}
      {head && <HeadMark whole={whole} head={head} />}
    </g>
  );
}

/** The head: a bar along its edge, outside the stone, with the word. */
function HeadMark({
  whole,
  head,
}: {
  whole: { x: number; y: number; width: number; height: number };
  head: Edge;
}) {
  const { x, y, width, height } = whole;
  const middle: Readonly<Record<Edge, readonly [number, number, number]>> = {
    top: [x + width / 2, y - 9, 0],
    bottom: [x + width / 2, y + height + 9, 180],
    left: [x - 9, y + height / 2, -90],
    right: [x + width + 9, y + height / 2, 90],
  };
  const [atX, atY, turn] = middle[head];
  const half = (head === 'top' || head === 'bottom' ? width : height) / 2;
  return (
    <g transform={`translate(${atX} ${atY}) rotate(${turn})`} className="head-mark">
      <path d={`M${-half} 4H-30M30 4H${half}`} />
      <text y="4" textAnchor="middle">
        {say('head')}
      </text>
    </g>
  );
}
