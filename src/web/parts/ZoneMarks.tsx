import './ZoneMarks.css';
import { memo } from 'react';
import type { PatchMark } from '../../paper/charts/patchMark.ts';
import type { WorkZone } from '../../records/work.ts';
import type { Point } from '../../science/geometry/point.ts';
import { zoneLetter } from '../../studio/etch/zoneLetters.ts';
import { letterPlace } from '../managers/letterPlace.ts';
import { type LinkedView, toScreenPx } from '../managers/linkedView.ts';
import type { DeskState } from '../managers/zoneDesk.ts';
import { say } from '../words/say.ts';

/** The zones on the board with their letters, the one in hand with its points, and the outline being drawn. */
export function ZoneMarks({
  view,
  state,
  others = [],
  faulty,
  letterOf = (_, index) => zoneLetter(index),
  markOf = () => null,
}: {
  view: LinkedView;
  state: DeskState;
  /** Outlines as somebody else saved them, to compare. */
  others?: readonly WorkZone[];
  /** Ids of zones whose outline crosses itself or encloses nothing. */
  faulty: ReadonlySet<string>;
  /** What a zone goes by on the stone; its letter by its place in the row unless told. */
  letterOf?: (zone: WorkZone, index: number) => string;
  /** A mark that stands before the letter; none unless told. */
  markOf?: (zone: WorkZone, index: number) => PatchMark | null;
}) {
  const { drawing, picked, point, against } = state;
  const inHand = drawing.zones.find(({ id }) => id === picked);
  return (
    <g className={drawing.outline ? 'zone-marks drawing' : 'zone-marks'}>
      {others.map((zone) => (
        <polygon key={zone.id} className="zone-other" points={pointsPx(view, zone.polygonMm)} />
      ))}
      {drawing.zones.map((zone, index) => (
        <ZoneMark
          key={zone.id}
          view={view}
          zone={zone}
          letter={letterOf(zone, index)}
          mark={markOf(zone, index)?.path ?? null}
          markWide={markOf(zone, index)?.width ?? 0}
          picked={zone.id === picked}
          faulty={faulty.has(zone.id)}
        />
      ))}
      {inHand && !drawing.outline && (
        <g className="zone-points">
          {inHand.polygonMm.map((place, index) => {
            const [x, y] = toScreenPx(view, place);
            const held = index === point;
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: points have no other name
              <g key={index} transform={`translate(${x} ${y})`} className={held ? 'held' : undefined}>
                <circle r={held ? 9 : 5.5} />
                {held && against !== 'nothing' && <LaidAgainst to={against} />}
              </g>
            );
          })}
        </g>
      )}
      {drawing.outline && <OpenOutline view={view} state={state} outline={drawing.outline} />}
    </g>
  );
}

/** A letter on a place narrower than itself shrinks to this much, and no further: smaller can't be read. */
const leastLetter = 0.6;

/** One zone; drawn anew only where it, or the view of it, is another: the rest stands still under the hand. */
const ZoneMark = memo(function ZoneMark({
  view,
  zone,
  letter,
  mark,
  markWide,
  picked,
  faulty,
}: {
  view: LinkedView;
  zone: WorkZone;
  letter: string;
  /** What is stroked before the letter, and how wide it is. */
  mark: string | null;
  markWide: number;
  picked: boolean;
  faulty: boolean;
}) {
  const points = pointsPx(view, zone.polygonMm);
  const [x, y] = toScreenPx(view, letterPlace(zone.polygonMm));
  const [across, down] = [roomPx(view, zone, 0), roomPx(view, zone, 1)];
  const wideLetter = letter === '' ? 0 : 11 * letter.length;
  const wideBoth = 9 + 1.5 * markWide + wideLetter + 5;
  // what would lie over its neighbours stands by its letter alone until it is brought closer
  const marked = mark !== null && (letter === '' || across / (wideBoth + 4) >= leastLetter);
  const wide = marked ? wideBoth - (letter === '' ? 5 : 0) : 9 + wideLetter;
  const shrunk = Math.min(1, Math.max(leastLetter, Math.min(across / (wide + 4), down / 30)));
  // over its neighbours it would hide theirs: the list and a closer view name it
  const named = picked || wide * leastLetter <= 2 * across;
  const bare = zone.intention !== undefined && zone.intention !== 'drawn';
  return (
    <g className={`zone-mark${picked ? ' picked' : ''}${bare ? ' bare' : ''}${faulty ? ' faulty' : ''}`}>
      <polygon className="zone-rim" points={points} />
      <polygon className="zone-line" points={points} />
      {named && (
        <g transform={`translate(${x} ${y}) scale(${shrunk})`} className="zone-letter">
          <rect x={-wide / 2} y="-13" width={wide} height="26" />
          {marked && (
            <path
              className="zone-own-mark"
              transform={`translate(${4.5 - wide / 2} -7.5) scale(1.5)`}
              d={mark!}
            />
          )}
          <text x={(wide - 9 - wideLetter) / 2} y="7" textAnchor="middle">
            {letter}
          </text>
        </g>
      )}
    </g>
  );
});

function OpenOutline({
  view,
  state: { cross, against },
  outline,
}: {
  view: LinkedView;
  state: DeskState;
  outline: readonly Point[];
}) {
  const at = toScreenPx(view, cross);
  return (
    <g className="zone-open">
      <polyline className="zone-open-rim" points={pointsPx(view, outline)} />
      <polyline className="zone-open-line" points={pointsPx(view, outline)} />
      {outline.length > 0 && (
        <polyline className="zone-next-side" points={pointsPx(view, [outline.at(-1)!, cross])} />
      )}
      <g className="zone-points">
        {outline.map((place, index) => {
          const [x, y] = toScreenPx(view, place);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: points have no other name
            <circle key={index} cx={x} cy={y} r={index === 0 ? 8 : 4} />
          );
        })}
      </g>
      <g transform={`translate(${at[0]} ${at[1]})`} className="zone-cross">
        <path className="zone-open-rim" d="M-22 0H-5M5 0H22M0 -22V-5M0 5V22" />
        <path className="zone-open-line" d="M-22 0H-5M5 0H22M0 -22V-5M0 5V22" />
        {against !== 'nothing' && <LaidAgainst to={against} />}
      </g>
    </g>
  );
}

const laidAgainstWords: Readonly<Record<Exclude<DeskState['against'], 'nothing'>, string>> = {
  point: say('on a point'),
  edge: say('on an edge'),
  'stone border': say('on the border'),
};

/** What a point was laid against. */
function LaidAgainst({ to }: { to: keyof typeof laidAgainstWords }) {
  return (
    <text className="zone-against" x="14" y="-12">
      {laidAgainstWords[to]}
    </text>
  );
}

/** How far a zone reaches on the screen, along (0) or down (1), px. */
function roomPx({ pxPerMm }: LinkedView, { polygonMm }: WorkZone, axis: 0 | 1): number {
  const places = polygonMm.map((place) => place[axis]);
  return (Math.max(...places) - Math.min(...places)) * pxPerMm;
}

function pointsPx(view: LinkedView, places: readonly Point[]): string {
  return places.map((place) => toScreenPx(view, place).map((value) => value.toFixed(1))).join(' ');
}
