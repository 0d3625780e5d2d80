import './LiftPicture.css';
import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';
import type { MapKind } from '../look/mapInk.ts';
import { LiftDesk } from '../managers/liftDesk.ts';
import { LiftPainter } from '../managers/liftPainter.ts';
import { toStoneMm } from '../managers/linkedView.ts';
import { liftWords } from '../managers/sheetLift.ts';
import { withSurroundings, zoneAt, zoneBounds } from '../managers/zonePlace.ts';
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';
import type { ShownMarks } from './MapLegend.tsx';
import { useLiftScene } from './useLiftScene.ts';

/** The stone with its print on it as a sheet that can be lifted by its edge; one zoom and pan for both. */
export function LiftPicture({
  id,
  sizeMm,
  zones,
  partial,
  shown,
  picked,
  onPick,
}: {
  id: string;
  sizeMm: Point;
  zones: readonly Zone[];
  /** Whether a mask says where the sheet lay, for one that did not cover all. */
  partial: boolean;
  shown: ShownMarks;
  picked: string | null;
  onPick: (id: string | null) => void;
}) {
  const { scene, failed } = useLiftScene(id, sizeMm, zones, partial);
  const area = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [, redraw] = useState(0);
  const desk = useMemo(() => new LiftDesk(sizeMm, () => redraw((count) => count + 1)), [sizeMm]);
  const painter = useMemo(() => new LiftPainter(), []);
  const pointers = useRef(new Map<number, Point>());
  const pressedAt = useRef<Point | null>(null);

  useEffect(() => {
    const observer = new ResizeObserver(([entry]) =>
      desk.resize([entry!.contentRect.width, entry!.contentRect.height]),
    );
    observer.observe(area.current!);
    return () => observer.disconnect();
  }, [desk]);

  const ready = scene !== null;
  const opening = scene?.opening ?? null;
  useEffect(() => {
    if (opening !== null) desk.travelTo(null, opening, calm() ? 0 : 900, performance.now());
  }, [opening, desk]);

  useEffect(() => {
    const zone = zones.find((one) => one.id === picked);
    if (zone && ready)
      desk.travelTo(
        withSurroundings(zoneBounds(zone), 0.35),
        desk.state.lift,
        calm() ? 0 : 450,
        performance.now(),
      );
  }, [picked, zones, ready, desk]);

  useEffect(() => {
    if (!scene || !canvas.current || !area.current) return;
    const frame = requestAnimationFrame((now) => {
      const moved = desk.step(now);
      draw();
      if (moved) redraw((count) => count + 1);
    });
    const draw = () => {
      const element = canvas.current;
      const context = element?.getContext('2d');
      if (!element || !context) return;
      const ratio = Math.min(window.devicePixelRatio || 1, 2);
      const [width, height] = [
        Math.round(element.clientWidth * ratio),
        Math.round(element.clientHeight * ratio),
      ];
      if (element.width !== width) element.width = width;
      if (element.height !== height) element.height = height;
      const masks = Object.fromEntries(
        Object.entries(scene.masks).filter(([kind]) => shown[kind as MapKind]),
      );
      painter.paint(
        context,
        { ...scene, masks, picked, lettered: shown.zones },
        desk.state.view,
        desk.state.lift,
        ratio,
      );
    };
    return () => cancelAnimationFrame(frame);
  });

  // React listens to the wheel passively; the page must not scroll while one zooms.
  useEffect(() => {
    const element = area.current!;
    const wheel = (event: WheelEvent) => {
      if (!event.ctrlKey && !element.contains(document.activeElement)) return;
      event.preventDefault();
      const box = element.getBoundingClientRect();
      desk.zoom(Math.exp(-event.deltaY * 0.0015), [event.clientX - box.left, event.clientY - box.top]);
    };
    element.addEventListener('wheel', wheel, { passive: false });
    return () => element.removeEventListener('wheel', wheel);
  }, [desk]);

  const at = (event: PointerEvent): Point => {
    const box = area.current!.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const down = (event: PointerEvent) => {
    area.current!.setPointerCapture(event.pointerId);
    pointers.current.set(event.pointerId, at(event));
    if (pointers.current.size > 1) return desk.release();
    pressedAt.current = desk.take(at(event)) === 'desk' ? at(event) : null;
  };
  const move = (event: PointerEvent) => {
    const was = pointers.current.get(event.pointerId);
    if (!was) return;
    const now = at(event);
    const other = [...pointers.current].find(([pointer]) => pointer !== event.pointerId)?.[1];
    pointers.current.set(event.pointerId, now);
    if (pressedAt.current && distance(pressedAt.current, now) > 6) pressedAt.current = null;
    if (other) {
      // First the hand's move, then its spread about where the hand now is: what lies between the fingers stays there.
      desk.pan([(now[0] - was[0]) / 2, (now[1] - was[1]) / 2]);
      desk.zoom(distance(now, other) / Math.max(distance(was, other), 1), [
        (now[0] + other[0]) / 2,
        (now[1] + other[1]) / 2,
      ]);
    } else desk.drag(now, [now[0] - was[0], now[1] - was[1]]);
  };
  const up = (event: PointerEvent) => {
    pointers.current.delete(event.pointerId);
    desk.release();
    if (pressedAt.current) onPick(zoneAt(zones, toStoneMm(desk.state.view, pressedAt.current))?.id ?? null);
    pressedAt.current = null;
  };
  const key = (meant: (event: KeyboardEvent) => boolean) => (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || !meant(event)) return;
    event.preventDefault();
    event.stopPropagation();
  };
  const [gripX, gripY] = desk.gripPx();

  return (
    <div className="lift-picture">
      <div
        ref={area}
        className="lift-area"
        role="group"
        aria-label={say(
          'The stone with its print. Arrow keys move it, plus and minus bring it closer and farther.',
        )}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is moved and brought closer by keys
        tabIndex={0}
        // Seen whole, a finger going up or down moves the page; closer, it moves the stone.
        style={{ touchAction: desk.isWhole ? 'pan-y' : 'none' }}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={up}
        onKeyDown={key((event) => desk.deskKey(event.key))}
      >
        <canvas ref={canvas} />
        {!scene && (
          <p className="lift-waiting">
            {failed
              ? say('The pictures could not be loaded. Load the page again.')
              : say('Laying the print on the stone …')}
          </p>
        )}
        {scene && (
          <div
            className="lift-edge"
            role="slider"
            tabIndex={0}
            aria-label={say('Lift the print off the stone')}
            aria-valuemin={0}
            aria-valuemax={100}
            aria-valuenow={Math.round(desk.state.lift * 100)}
            aria-valuetext={liftWords(desk.state.lift)}
            style={{ transform: `translate(${gripX}px, ${gripY}px)` }}
            onKeyDown={key((event) => desk.liftKey(event.key))}
          />
        )}
      </div>
      <div className="lift-keys">
        <p>
          {sayRich(
            'Pull the sheet’s edge<span>, or use the arrow keys on it</span>. Shown as on the stone.',
            { span: (words) => <span className="with-keys">{words}</span> },
          )}
        </p>
        <button type="button" onClick={() => desk.zoom(1.6)}>
          {say('Closer')}
        </button>
        <button type="button" onClick={() => desk.zoom(1 / 1.6)}>
          {say('Farther')}
        </button>
        <button
          type="button"
          onClick={() => {
            onPick(null);
            desk.travelTo(null, desk.state.lift, calm() ? 0 : 300, performance.now());
          }}
        >
          {say('Whole')}
        </button>
      </div>
    </div>
  );
}

function calm(): boolean {
  return window.matchMedia('(prefers-reduced-motion: reduce)').matches;
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
