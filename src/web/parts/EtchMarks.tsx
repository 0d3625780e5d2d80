import './EtchMarks.css';
import { useMemo } from 'react';
import type { EtchMapInput } from '../../paper/charts/etchMap/mapAreas.ts';
import { mapAreas } from '../../paper/charts/etchMap/mapAreas.ts';
import { etchMapMarks } from '../../paper/charts/etchMap.ts';
import { roomAt } from '../../science/geometry/roomiestPoint.ts';
import { letterPlace } from '../managers/letterPlace.ts';
import { type LinkedView, toScreenPx } from '../managers/linkedView.ts';

/** Screen px for one printed mm of hatching, with the whole stone in sight. */
const hatchPx = 3;
const nowhere = { left: 0, top: 0, right: 0, bottom: 0 };

/** The etch map on the board: the same hatching as on paper, each zone with its letter and millilitres. */
export function EtchMarks({
  view,
  wholePxPerMm,
  input,
  picked,
}: {
  view: LinkedView;
  /** Scale at which the whole stone is seen; the hatching grows with coming closer. */
  wholePxPerMm: number;
  input: EtchMapInput;
  /** Id of the row pointed at. */
  picked: string | null;
}) {
  const unit = hatchPx / wholePxPerMm;
  const { widthMm, heightMm } = input.request.stone;
  const svg = useMemo(() => {
    const whole = { left: 0, top: 0, right: widthMm, bottom: heightMm };
    return etchMapMarks(input, false, unit, whole, nowhere).places;
  }, [input, unit, widthMm, heightMm]);
  const areas = useMemo(() => mapAreas(input, false), [input]);
  const [x, y] = view.offsetPx;
  return (
    <g className="etch-marks">
      <g
        transform={`translate(${x} ${y}) scale(${view.pxPerMm})`}
        // biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; words in it are escaped where it is made
        dangerouslySetInnerHTML={{ __html: svg }}
      />
      {areas.map((area, index) => {
        const ring = area.rings[0];
        if (!ring) return null;
        const ground = index === 0;
        const place = ground ? groundPlace(widthMm, heightMm) : letterPlace(ring);
        const [atX, atY] = toScreenPx(view, place);
        const roomPx = roomAt({ rings: area.rings, without: [] }, place) * view.pxPerMm;
        const words = area.words[0] ?? '';
        const withWords = ground || roomPx > 24;
        const wide = withWords ? Math.max(26, words.length * 8.2 + 12) : 14 + 12 * area.letter.length;
        return (
          <g
            key={`${area.id} ${area.letter}`}
            transform={`translate(${atX} ${atY})`}
            className={area.id === picked ? 'etch-label picked' : 'etch-label'}
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

/** The ground's letter stands in the lower left corner of the stone, which drawings seldom reach. */
function groundPlace(widthMm: number, heightMm: number): readonly [number, number] {
  return [Math.min(widthMm * 0.1, 40), heightMm - Math.min(heightMm * 0.06, 26)];
}
