import './HatchSwatch.css';
import { useId } from 'react';
import { hatchTiles } from '../../paper/charts/hatching.ts';
import type { Change } from '../../records/comparison.ts';
import { hatchScale, mapInk } from '../look/mapInk.ts';

/** The sign of one kind of change, as map, ladder and sheet show it. `small` stands beside a word in a table. */
export function HatchSwatch({ kind, small = false }: { kind: Change; small?: boolean }) {
  const id = useId();
  const { width, height, strokes, rings, dots, strokeWidth } = hatchTiles[kind];
  const { stroke, under } = mapInk[kind];
  const [across, down] = small ? [22, 16] : [36, 26];
  return (
    <svg
      className="hatch-swatch"
      viewBox={`0 0 ${across} ${down}`}
      width={across}
      height={down}
      aria-hidden="true"
    >
      <pattern
        id={id}
        width={width}
        height={height}
        patternUnits="userSpaceOnUse"
        patternTransform={`scale(${small ? 1 : hatchScale})`}
        stroke={stroke}
        strokeWidth={strokeWidth}
      >
        {strokes.map(([x1, y1, x2, y2]) => (
          <line key={`${x1} ${y1} ${x2} ${y2}`} x1={x1} y1={y1} x2={x2} y2={y2} />
        ))}
        {rings.map(([x, y, radius]) => (
          <circle key={`${x} ${y}`} cx={x} cy={y} r={radius} fill="none" />
        ))}
        {dots.map(([x, y, radius]) => (
          <circle key={`${x} ${y}`} cx={x} cy={y} r={radius} fill={stroke} stroke="none" />
        ))}
      </pattern>
      <rect x="0" y="0" width={across} height={down} fill={under} />
      <rect
        x="0.75"
        y="0.75"
        width={across - 1.5}
        height={down - 1.5}
        fill={`url(#${id})`}
        stroke={stroke}
        strokeWidth="1.5"
      />
    </svg>
  );
}
