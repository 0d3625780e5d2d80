import './HatchSwatch.css';
import { useId } from 'react';
import { hatchings, type MapKind } from '../look/hatching.ts';

/** The sign of one kind of change as the map shows it. */
export function HatchSwatch({ kind }: { kind: MapKind }) {
  const id = useId();
  const { latticePx, path, strokePx, colour, under } = hatchings[kind];
  return (
    <svg className="hatch-swatch" viewBox="0 0 36 26" width="36" height="26" aria-hidden="true">
      <pattern id={id} width={latticePx} height={latticePx} patternUnits="userSpaceOnUse">
        <path d={path} fill="none" stroke={colour} strokeWidth={strokePx} />
      </pattern>
      <rect x="0.75" y="0.75" width="34.5" height="24.5" fill={under} stroke={colour} strokeWidth="1.5" />
      <rect x="1.5" y="1.5" width="33" height="23" fill={`url(#${id})`} />
    </svg>
  );
}
