import './HeadEdge.css';
import type { CSSProperties } from 'react';
import type { Edge } from '../../records/stone.ts';
import { say } from '../words/say.ts';
import { Picks } from './Picks.tsx';

const edges: readonly (readonly [Edge, string])[] = [
  ['top', say('top')],
  ['right', say('right')],
  ['bottom', say('bottom')],
  ['left', say('left')],
];

/** Which edge of the stone is the head of the image, with a small stone that shows it. */
export function HeadEdge({
  head,
  widthMm,
  heightMm,
  onPick,
}: {
  head: Edge;
  widthMm: number;
  heightMm: number;
  onPick: (head: Edge) => void;
}) {
  return (
    <div className="head-edge">
      <span
        className={`head-edge-stone ${head}`}
        style={{ '--aspect': widthMm / heightMm } as CSSProperties}
        aria-hidden="true"
      />
      <Picks
        label={say('The image’s head lies at the stone’s')}
        value={head}
        options={edges}
        onPick={onPick}
      />
    </div>
  );
}
