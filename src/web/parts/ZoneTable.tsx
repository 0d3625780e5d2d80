import './ZoneTable.css';
import type { Change, ZoneResult } from '../../records/comparison.ts';
import { zoneLetter } from '../managers/zonePlace.ts';
import { coverageWords } from './figures.ts';

const changeWords: Readonly<Record<Change, string>> = {
  held: 'held',
  lost: 'lost',
  lighter: 'lighter',
  darker: 'darker',
  filled: 'filled',
  scum: 'scum',
  undecided: 'can’t tell',
};

/** Zones with their coverage drawn and printed, ±, and what became of them. Picking one shows its place. */
export function ZoneTable({
  zones,
  picked,
  onPick,
}: {
  zones: readonly ZoneResult[];
  picked: string | null;
  onPick: (id: string | null) => void;
}) {
  return (
    <table className="zone-table">
      <thead>
        <tr>
          <th scope="col">zone</th>
          <th scope="col">drawn</th>
          <th scope="col">print</th>
          <th scope="col">
            <span className="unseen">what became of it</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {zones.map((zone, index) => (
          <tr key={zone.id} className={zone.id === picked ? 'picked' : undefined}>
            <th scope="row">
              <button
                type="button"
                aria-pressed={zone.id === picked}
                onClick={() => onPick(zone.id === picked ? null : zone.id)}
              >
                <b>{zoneLetter(index)}</b> <span>{zone.name}</span>
              </button>
            </th>
            <td>{coverageWords(zone.drawn)}</td>
            <td>{coverageWords(zone.printed)}</td>
            <td className={zone.change === 'held' ? undefined : 'changed'}>{changeWords[zone.change]}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
