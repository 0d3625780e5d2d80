import './EtchMarks.css';
import { useMemo } from 'react';
import type { MapArea } from '../../paper/charts/etchMap/mapAreas.ts';
import { type Box, hatchedPlaceSvg } from '../../paper/charts/strengthHatching.ts';
import type { Point } from '../../science/geometry/point.ts';
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
      {areas.map((area, index) => {
        const ring = area.rings[0];
        if (!ring) return null;
        const ground = index === 0;
        const place = ground ? ([0, height] as const) : letterPlace(ring);
        const [x, y] = toScreenPx(view, place);
        // The ground's letter stands in the lower left corner of the stone, which drawings seldom reach.
        const [atX, atY] = ground ? [x + 44, y - 40] : [x, y];
        const roomPx = roomAt({ rings: area.rings, without: [] }, place) * view.pxPerMm;
        const words = area.words[0] ?? '';
        const wordsWide = Math.max(26, words.length * 8.2 + 12);
        const withWords = words !== '' && (ground || Math.hypot(wordsWide / 2, 30) < roomPx * 1.15);
        const wide = withWords ? wordsWide : 14 + 12 * area.letter.length;
        return (
          <g
            key={`${area.id} ${area.letter}`}
            transform={`translate(${atX} ${atY})`}
            className={isOf(area.id, picked) ? 'etch-label picked' : 'etch-label'}
          >
            <rect x={-wide / 2} y="-14" width={wide} height={withWords ? 46 : 28} />
            <text y="8" className="etch-letter">
              {area.letter}
            </text>
            {withWords && <text y="26">{words}</text>}
          </g>
        );
      })}
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
