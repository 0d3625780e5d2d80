import './BenchStone.css';
import { useMemo } from 'react';
import type { MapArea } from '../../../paper/charts/etchMap/mapAreas.ts';
import { hatchedPlaceSvg } from '../../../paper/charts/strengthHatching.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { signedArea } from '../../../science/geometry/polygon.ts';
import { roomAt } from '../../../science/geometry/roomiestPoint.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import type { BenchPlace } from '../../managers/bench/benchView.ts';
import { groundLabelAt } from '../../managers/bench/groundLabelAt.ts';
import { placeLabel } from '../../managers/bench/placeLabel.ts';
import { letterPlace } from '../../managers/letterPlace.ts';
import { say } from '../../words/say.ts';

/** The stone from above: what to touch is lit, what lies wet dims towards its gap, each with its letter and seconds. */
export function BenchStone({
  areas,
  widthMm,
  heightMm,
  places,
  label,
}: {
  /** The ground first. */
  areas: readonly MapArea[];
  widthMm: number;
  heightMm: number;
  places: readonly BenchPlace[];
  label: string;
}) {
  const unit = Math.max(widthMm, heightMm) / 130;
  const hatchings = useMemo(
    () =>
      areas.map(({ strength, rings }) =>
        strength === null
          ? ''
          : hatchedPlaceSvg(strength, rings, '#14110f', unit, {
              left: 0,
              top: 0,
              right: widthMm,
              bottom: heightMm,
            }),
      ),
    [areas, unit, widthMm, heightMm],
  );
  const byId = new Map(places.map((place) => [place.id, place]));
  return (
    <div className="bench-stone">
      <svg viewBox={`0 0 ${widthMm} ${heightMm}`} role="img" aria-label={label}>
        {areas.map((area, index) => {
          const place = byId.get(area.id);
          return (
            <g key={area.id} className={place?.state ?? 'waiting'}>
              <path d={pathOf(area)} fillRule="evenodd" style={{ fill: fillOf(place) }} />
              <g
                className="bench-hatch"
                // biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing, which holds numbers alone
                dangerouslySetInnerHTML={{ __html: hatchings[index]! }}
              />
              <path className="bench-outline" d={pathOf(area)} strokeWidth={unit * 0.7} />
            </g>
          );
        })}
        {areas.map((area, index) => (
          <PlaceLetter
            key={area.id}
            area={area}
            place={byId.get(area.id)}
            ground={index === 0 ? { others: areas.slice(1), stoneMm: [widthMm, heightMm] } : null}
            unit={unit}
          />
        ))}
      </svg>
    </div>
  );
}

function PlaceLetter({
  area,
  place,
  ground,
  unit,
}: {
  area: MapArea;
  place: BenchPlace | undefined;
  /** For the ground: what its letter must not cover. */
  ground: { readonly others: readonly MapArea[]; readonly stoneMm: Point } | null;
  unit: number;
}) {
  const ring = useMemo(
    () => area.rings.toSorted((a, b) => Math.abs(signedArea(b)) - Math.abs(signedArea(a)))[0],
    [area],
  );
  if (!ring) return null;
  const middle = letterPlace(ring);
  const room = ground ? Number.POSITIVE_INFINITY : roomAt({ rings: area.rings, without: [] }, middle);
  const { words, size, wide, high } = placeLabel(area.letter, secondsWords(place), {
    room,
    unit,
    most: ground ? 9 : 17,
  });
  const [x, y] = ground
    ? groundLabelAt([wide, high], ground.stoneMm, ground.others, unit * 3)
    : [middle[0] - wide / 2, middle[1] - high / 2];
  return (
    <g className={`bench-letter ${place?.state ?? 'waiting'}`}>
      <rect x={x} y={y} width={wide} height={high} />
      <text x={x + wide / 2} y={y + size * 0.86} fontSize={size} textAnchor="middle">
        {words}
      </text>
    </g>
  );
}

/** How long until it must be touched; nothing where nothing lies. */
function secondsWords(place: BenchPlace | undefined): string {
  if (!place || place.state === 'waiting') return '';
  if (place.state === 'lifted') return say(' lifted');
  if (place.seconds === null) return '';
  return place.seconds < 0
    ? say(' late {minutesSeconds}', { minutesSeconds: minutesSeconds(-place.seconds) })
    : ` ${minutesSeconds(place.seconds)}`;
}

function pathOf({ rings }: MapArea): string {
  return rings.map((ring) => `M${ring.map((point) => point.join(' ')).join('L')}Z`).join('');
}

/** Wet etch shines and dulls: from the lightest to the darkest as its time untouched runs out. */
function fillOf(place: BenchPlace | undefined): string {
  switch (place?.state) {
    case 'lit':
      return '#f0b36b';
    case 'wet':
    case 'late':
      return `color-mix(in srgb, #5a5043 ${Math.round(place.share * 100)}%, #cfc4ab)`;
    case 'lifted':
      return '#2b2621';
    default:
      return '#453e35';
  }
}
