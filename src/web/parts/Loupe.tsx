import './Loupe.css';
import { type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { PhotographEntry } from '../../records/comparisonEntry.ts';
import type { Point } from '../../science/geometry/point.ts';
import { levelFor, tilesIn } from '../managers/tilePyramid.ts';
import { TileShelf } from '../managers/tileShelf.ts';
import { say } from '../words/say.ts';

/**
 * A loupe over a photograph, at full size or more: `centrePx` lies under the cross.
 * Pushing the picture inside it moves the place under the cross by photograph px, told to `onPush`.
 */
export function Loupe({
  photograph,
  centrePx,
  magnified,
  onPush,
}: {
  photograph: PhotographEntry;
  centrePx: Point;
  magnified: number;
  onPush: (byPx: Point) => void;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [, arrived] = useState(0);
  const shelf = useMemo(
    () => new TileShelf(photograph.id, () => arrived((count) => count + 1)),
    [photograph.id],
  );
  const held = useRef<Point | null>(null);

  useEffect(() => {
    const element = canvas.current;
    const context = element?.getContext('2d');
    if (!element || !context) return;
    const ratio = Math.min(window.devicePixelRatio || 1, 2);
    const size = Math.round(element.clientWidth * ratio);
    if (element.width !== size) element.width = element.height = size;
    const scale = magnified * ratio;
    const half = size / 2 / scale;
    const { widthPx, heightPx } = photograph;
    const from: Point = [centrePx[0] - half, centrePx[1] - half];
    const to: Point = [centrePx[0] + half, centrePx[1] + half];
    context.fillStyle = '#14110f';
    context.fillRect(0, 0, size, size);
    context.imageSmoothingEnabled = magnified < 4;
    const level = levelFor(widthPx, heightPx, scale);
    // A coarse tile first, so that something is seen while the sharp ones come.
    for (const at of [Math.max(level - 3, 0), level])
      for (const tile of tilesIn(widthPx, heightPx, at, from, to)) {
        const picture = shelf.take(tile);
        if (picture)
          context.drawImage(
            picture,
            (tile.fromPx[0] - from[0]) * scale,
            (tile.fromPx[1] - from[1]) * scale,
            tile.sizePx[0] * scale,
            tile.sizePx[1] * scale,
          );
      }
    drawCross(context, size, ratio);
  });

  const move = (event: PointerEvent) => {
    if (!held.current) return;
    const [x, y] = held.current;
    held.current = [event.clientX, event.clientY];
    onPush([(x - event.clientX) / magnified, (y - event.clientY) / magnified]);
  };
  return (
    <canvas
      ref={canvas}
      className="loupe"
      role="img"
      aria-label={say('The mark under a loupe')}
      onPointerDown={(event) => {
        event.preventDefault();
        event.currentTarget.setPointerCapture(event.pointerId);
        held.current = [event.clientX, event.clientY];
      }}
      onPointerMove={move}
      onPointerUp={() => {
        held.current = null;
      }}
      onPointerCancel={() => {
        held.current = null;
      }}
    />
  );
}

/** A cross that leaves the very place open, light with a dark rim so that it shows on stone and on ink. */
function drawCross(context: CanvasRenderingContext2D, size: number, ratio: number): void {
  const middle = size / 2;
  const gap = 5 * ratio;
  for (const [colour, width] of [
    ['#1a1714', 4],
    ['#f0b36b', 2],
  ] as const) {
    context.strokeStyle = colour;
    context.lineWidth = width * ratio;
    context.beginPath();
    for (const [x, y] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      context.moveTo(middle + x * gap, middle + y * gap);
      context.lineTo(middle + x * size * 0.3, middle + y * size * 0.3);
    }
    context.stroke();
  }
}
