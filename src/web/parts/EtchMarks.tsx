import './EtchMarks.css';
import { useMemo } from 'react';
import type { MapArea } from '../../paper/charts/etchMap/mapAreas.ts';
import { type Box, hatchedPlaceSvg } from '../../paper/charts/strengthHatching.ts';
import type { Point } from '../../science/geometry/point.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { roomAt } from '../../science/geometry/roomiestPoint.ts';
import { letterPlace } from '../managers/letterPlace.ts';
import { type LinkedView, toScreenPx } from '../managers/linkedView.ts';

/** Screen px for one printed mm of hatching, with the whole stone in sight. */
const hatchPx = 3;
const ink = '#1a1714';

/** Places on the board hatched by strength, with the same hatching as on paper, each with its letter and words. */
export function EtchMarks({
  view,
  wholePxPerMm,
  stoneMm: [width, height],
  areas,
  picked,
}: {
  view: LinkedView;
  /** Scale at which the whole stone is seen; the hatching grows with coming closer. */
  wholePxPerMm: number;
  stoneMm: Point;
  /** The ground first, then the zones in the order painted. */
  areas: readonly MapArea[];
  /** Id of the row pointed at. */
  picked: string | null;
}) {
  const unit = hatchPx / wholePxPerMm;
  const svg = useMemo(() => {
    const whole = { left: 0, top: 0, right: width, bottom: height };
    return areas.map((area) => areaSvg(area, unit, whole)).join('');
  }, [areas, unit, width, height]);
  const [offX, offY] = view.offsetPx;
  return (
    <g className="etch-marks">
      <g
        transform={`translate(${offX} ${offY}) scale(${view.pxPerMm})`}
        // biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing, which holds numbers alone
        dangerouslySetInnerHTML={{ __html: svg }}
      />
      {areas.map((area, index) => (
        <EtchLabel
          key={`${area.id} ${area.letter}`}
          view={view}
          area={area}
          groundFoot={index === 0 ? [0, height] : null}
          picked={isOf(area.id, picked)}
        />
      ))}
    </g>
  );
}

/** A letter with its millilitres, as large as its place allows; only the letter where the place is small. */
function EtchLabel({
  view,
  area,
  groundFoot,
  picked,
}: {
  view: LinkedView;
  area: MapArea;
  /** The stone's lower left corner for the ground, whose letter stands there: drawings seldom reach it. */
  groundFoot: Point | null;
  picked: boolean;
}) {
  const ring = useMemo(
    () => area.rings.toSorted((a, b) => Math.abs(signedArea(b)) - Math.abs(signedArea(a)))[0],
    [area],
  );
  if (!ring) return null;
  const place = groundFoot ?? letterPlace(ring);
  const roomPx = groundFoot
    ? Math.min(40, 36 * view.pxPerMm)
    : roomAt({ rings: area.rings, without: [] }, place) * view.pxPerMm;
  const size = Math.min(26, Math.max(13, roomPx * 1.15));
  const words = area.words[0] ?? '';
  const wordsWide = Math.max(26, words.length * 8.2 + 12);
  const withWords = words !== '' && Math.hypot(wordsWide / 2, 30) < roomPx * 1.15;
  const wide = withWords ? wordsWide : (0.35 + 0.5 * area.letter.length) * size;
  const [x, y] = toScreenPx(view, place);
  const [atX, atY] = groundFoot ? [x + roomPx, y - roomPx * 0.9] : [x, y];
  return (
    <g transform={`translate(${atX} ${atY})`} className={picked ? 'etch-label picked' : 'etch-label'}>
      <rect x={-wide / 2} y={-0.54 * size} width={wide} height={withWords ? 46 : 1.08 * size} />
      <text y={0.33 * size} fontSize={size} className="etch-letter">
        {area.letter}
      </text>
      {withWords && <text y="26">{words}</text>}
    </g>
  );
}

/** Whether a place is the zone pointed at, or a part of it. */
function isOf(id: string, picked: string | null): boolean {
  return picked !== null && (id === picked || id.startsWith(`${picked}:`));
}

function areaSvg({ strength, rings }: MapArea, unit: number, within: Box): string {
  const path = rings.map((ring) => `M${ring.map((place) => place.join(' ')).join('L')}Z`).join('');
  const hatching = strength === null ? '' : hatchedPlaceSvg(strength, rings, ink, unit, within);
  const outline = strength === null ? 'class="no-rule"' : '';
  return (
    `<path d="${path}" class="etch-place" fill-rule="evenodd"/>${hatching}` +
    `<path d="${path}" ${outline} fill="none" stroke="${ink}" stroke-width="${0.5 * unit}"/>`
  );
}
