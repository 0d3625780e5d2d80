import './MapLegend.css';
import type { MapKind } from '../look/hatching.ts';
import { HatchSwatch } from './HatchSwatch.tsx';

const words: Readonly<Record<MapKind, string>> = {
  lost: 'Lost: drawn, did not print',
  filled: 'Filled: closed up',
  scum: 'Scum or tint: printed where nothing was drawn',
};

/** The map's signs with their words; each can be hidden and shown. */
export function MapLegend({
  shown,
  onShown,
}: {
  shown: Readonly<Record<MapKind, boolean>>;
  onShown: (kind: MapKind, shown: boolean) => void;
}) {
  return (
    <fieldset className="map-legend">
      <legend className="unseen">Marks on the print</legend>
      {(['lost', 'filled', 'scum'] as const).map((kind) => (
        <label key={kind}>
          <input
            type="checkbox"
            checked={shown[kind]}
            onChange={(event) => onShown(kind, event.target.checked)}
          />
          <HatchSwatch kind={kind} />
          <span>{words[kind]}</span>
        </label>
      ))}
    </fieldset>
  );
}
