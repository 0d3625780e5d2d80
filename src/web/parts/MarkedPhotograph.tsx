import './MarkedPhotograph.css';
import { type CSSProperties, type PointerEvent, type ReactNode, useRef } from 'react';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Point } from '../../science/geometry/point.ts';
import { previewAddress } from '../client/photographs.ts';
import { say } from '../words/say.ts';

/** A press on a photograph. */
export interface PhotographPress {
  /** Photograph px. */
  readonly at: Point;
  /** Photograph px that lie under one px of the screen. */
  readonly perScreenPx: number;
  readonly finger: boolean;
}

/** A photograph as large as its frame allows, with outlines drawn on it; what is marked on it are its children. */
export function MarkedPhotograph({
  photograph,
  outlinesPx,
  onPress,
  onMove,
  onDrop,
  children,
}: {
  photograph: PhotographEntry;
  outlinesPx: readonly (readonly Point[])[];
  onPress: (press: PhotographPress) => void;
  onMove: (atPx: Point) => void;
  /** `kept` is false where the browser took the pointer away. */
  onDrop: (kept: boolean) => void;
  children: ReactNode;
}) {
  const board = useRef<HTMLDivElement>(null);
  const { widthPx, heightPx } = photograph;
  const pressed = (event: PointerEvent): PhotographPress => {
    const box = board.current!.getBoundingClientRect();
    return {
      at: [
        ((event.clientX - box.left) / box.width) * widthPx,
        ((event.clientY - box.top) / box.height) * heightPx,
      ],
      perScreenPx: widthPx / box.width,
      finger: event.pointerType === 'touch',
    };
  };
  return (
    <div className="marked-frame" style={{ '--aspect': widthPx / heightPx } as CSSProperties}>
      <div
        ref={board}
        className="marked-photograph"
        onPointerDown={(event) => {
          event.preventDefault();
          board.current!.setPointerCapture(event.pointerId);
          onPress(pressed(event));
        }}
        onPointerMove={(event) => onMove(pressed(event).at)}
        onPointerUp={() => onDrop(true)}
        onPointerCancel={() => onDrop(false)}
      >
        <img
          src={previewAddress(photograph.id, 1600)}
          alt={say('Photograph {fileName}', { fileName: photograph.fileName })}
          draggable={false}
        />
        <svg viewBox={`0 0 ${widthPx} ${heightPx}`} preserveAspectRatio="none" aria-hidden="true">
          {outlinesPx.map((outline, index) => {
            const points = outline.map((point) => point.join(',')).join(' ');
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: outlines have no other name
              <g key={index}>
                <polygon className="marked-rim" points={points} />
                <polygon className="marked-line" points={points} />
              </g>
            );
          })}
        </svg>
        {children}
      </div>
    </div>
  );
}

/** Where a place of a photograph lies on it, whatever its size on the screen. */
export function placeOn({ widthPx, heightPx }: PhotographEntry, [x, y]: Point): CSSProperties {
  return { left: `${(x / widthPx) * 100}%`, top: `${(y / heightPx) * 100}%` };
}
