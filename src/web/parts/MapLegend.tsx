import './MapLegend.css';
import type { ReactNode } from 'react';
import { type MapKind, mapKinds } from '../look/mapInk.ts';
import { say } from '../words/say.ts';
import { HatchSwatch } from './HatchSwatch.tsx';

/** What is marked on the picture. */
export type ShownMarks = Readonly<Record<MapKind | 'zones', boolean>>;

const words: Readonly<Record<MapKind, readonly [word: string, meaning: string]>> = {
  lost: [say('Lost'), say('did not print')],
  filled: [say('Filled in'), say('small whites gone')],
  scum: [say('Scum or tint'), say('ink on bare ground')],
};

/** The map's signs with their words; each can be hidden and shown, and so can the zones where there are any. */
export function MapLegend({
  shown,
  zoned,
  onShown,
}: {
  shown: ShownMarks;
  zoned: boolean;
  onShown: (mark: keyof ShownMarks, shown: boolean) => void;
}) {
  const line = (mark: keyof ShownMarks, sign: ReactNode, word: string, meaning = '') => (
    <button key={mark} type="button" aria-pressed={shown[mark]} onClick={() => onShown(mark, !shown[mark])}>
      {sign}
      <span>
        <span className="legend-word">{word}</span>
        {meaning && <span className="legend-meaning soft">{meaning}</span>}
      </span>
    </button>
  );
  return (
    <fieldset className="map-legend">
      <legend className="soft">{say('Shown on the stone:')}</legend>
      {mapKinds.map((kind) => line(kind, <HatchSwatch kind={kind} />, ...words[kind]))}
      {zoned &&
        line(
          'zones',
          <b className="zone-swatch" aria-hidden="true">
            {say('A')}
          </b>,
          say('Zones'),
        )}
    </fieldset>
  );
}
