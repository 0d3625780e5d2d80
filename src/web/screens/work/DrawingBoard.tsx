import { type KeyboardEvent, type ReactNode, useMemo, useRef, useState } from 'react';
import type { PatchMark } from '../../../paper/charts/patchMark.ts';
import type { WorkZone } from '../../../records/work.ts';
import type { Point } from '../../../science/geometry/point.ts';
import type { BoardHand } from '../../managers/boardHand.ts';
import { type BoardCommand, boardCommand, type InHand } from '../../managers/boardKeys.ts';
import { deskUser } from '../../managers/deskUser.ts';
import { keyStride } from '../../managers/keyStride.ts';
import type { LinkedView } from '../../managers/linkedView.ts';
import type { DeskState, ZoneDesk } from '../../managers/zoneDesk.ts';
import { KeyStride } from '../../parts/KeyStride.tsx';
import { StoneBoard } from '../../parts/StoneBoard.tsx';
import { StoneFace } from '../../parts/StoneFace.tsx';
import { ZoneMarks } from '../../parts/ZoneMarks.tsx';
import { lengthWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { type BoardThing, boardLabel, boardWords } from './boardWords.ts';
import { type BoardStone, PhotographUnder, useShownPhotograph } from './PhotographUnder.tsx';

/** The stone with its zones, or other outlines, to be drawn and mended by mouse, finger or keys. */
export function DrawingBoard({
  desk: { desk, state, work },
  faulty,
  others = [],
  thing = 'zone',
  whole = true,
  letterOf,
  markOf,
  beneath,
  above,
}: {
  desk: { readonly desk: ZoneDesk; readonly state: DeskState; readonly work: BoardStone };
  faulty: ReadonlySet<string>;
  others?: readonly WorkZone[];
  /** What an outline is called. */
  thing?: BoardThing;
  /** False where a rectangle on the stone is shown, which has neither head nor borders. */
  whole?: boolean;
  letterOf?: (zone: WorkZone, index: number) => string;
  /** A mark that stands on it before its letter. */
  markOf?: (zone: WorkZone, index: number) => PatchMark | null;
  /** What lies on the stone beneath the marks, in screen px. */
  beneath?: (view: LinkedView) => ReactNode;
  /** What lies above the marks, in screen px; it may catch pointers. */
  above?: (view: LinkedView) => ReactNode;
}) {
  const [meets, setMeets] = useState(true);
  const meeting = useRef(meets);
  meeting.current = meets;
  const user = useMemo(() => deskUser(desk, () => meeting.current), [desk]);
  const photograph = useShownPhotograph(work, state.drawing.rectangle);
  const { widthMm, heightMm } = work.stone;
  const stoneMm: Point = useMemo(() => [widthMm, heightMm], [widthMm, heightMm]);
  const inHand = state.drawing.outline ? 'outline' : state.point === null ? 'nothing' : 'point';
  return (
    <StoneBoard
      stoneMm={stoneMm}
      label={boardLabel(work.stone.name, thing)}
      user={user}
      place={placeInHand(state)}
      onKey={(event, board) => onKey(event, board, desk, inHand)}
      under={(board) => <PhotographUnder shown={photograph} {...board} />}
      marks={({ view }) => (
        <>
          <StoneFace
            view={view}
            stoneMm={stoneMm}
            head={whole ? state.drawing.head : null}
            rectangle={state.drawing.rectangle}
            bare={photograph.laid === null}
            borders={whole}
          />
          {beneath?.(view)}
          <ZoneMarks
            view={view}
            state={state}
            others={others}
            faulty={faulty}
            {...(letterOf && { letterOf })}
            {...(markOf && { markOf })}
          />
          {above?.(view)}
        </>
      )}
      foot={
        <>
          <div className="stone-board-view">
            <button type="button" disabled={!state.canUndo} onClick={() => desk.undo()}>
              {say('Take back')}
            </button>
            <button type="button" disabled={!state.canRedo} onClick={() => desk.redo()}>
              {say('Put back')}
            </button>
            <KeyStride unit="mm" />
            <button type="button" onClick={() => setMeets(!meets)}>
              {meets
                ? say('A new line is laid against its neighbour’s')
                : say('A new line stays where it is put')}
            </button>
          </div>
          <p className="board-words" id="stone-board-keys">
            {boardWords(state, window.matchMedia('(pointer: coarse)').matches, thing)}
          </p>
          <p className="unseen" role="status">
            {handWords(state)}
          </p>
        </>
      }
    />
  );
}

function onKey(event: KeyboardEvent, board: BoardHand, desk: ZoneDesk, inHand: InHand): boolean {
  const command = boardCommand(event, inHand, keyStride.current());
  // Undoing is heard by the whole page.
  if (!command || command.do === 'undo' || command.do === 'redo') return false;
  if (command.do === 'push') desk.push(command.byMm);
  else doings[command.do](desk, board);
  return true;
}

const doings: Readonly<
  Record<Exclude<BoardCommand['do'], 'push' | 'undo' | 'redo'>, (desk: ZoneDesk, board: BoardHand) => void>
> = {
  begin: (desk) => desk.begin(),
  put: (desk) => desk.put(0),
  close: (desk) => desk.close(),
  leave: (desk) => desk.leave(),
  'to the edge': (desk) => desk.toEdge(),
  'next point': (desk) => desk.nextPoint(1),
  'point before': (desk) => desk.nextPoint(-1),
  'add point': (desk) => desk.addPoint(),
  'remove point': (desk) => desk.removePoint(),
  closer: (_, board) => board.zoom(1.6),
  farther: (_, board) => board.zoom(1 / 1.6),
  'other stride': () => keyStride.change(),
};

/** The place that must stay in sight while keys move it. */
function placeInHand({ drawing, picked, point, cross }: DeskState): Point | null {
  if (drawing.outline) return cross;
  const zone = drawing.zones.find(({ id }) => id === picked);
  return zone && point !== null ? zone.polygonMm[point]! : null;
}

/** What is in hand, for those who don't see the board. */
function handWords({ drawing, picked, point, cross }: DeskState): string {
  const place = ([x, y]: Point) =>
    say('{x} across, {y} down', { x: lengthWords(x, 1), y: lengthWords(y, 1) });
  if (drawing.outline)
    return say('Cross at {place}; {count} points put.', {
      place: place(cross),
      count: drawing.outline.length,
    });
  const zone = drawing.zones.find(({ id }) => id === picked);
  if (!zone) return '';
  if (point === null)
    return say('{zone} in hand, {count} points.', { zone: zone.name, count: zone.polygonMm.length });
  return say('Point {point} of {count}, at {place}.', {
    point: point + 1,
    count: zone.polygonMm.length,
    place: place(zone.polygonMm[point]!),
  });
}
