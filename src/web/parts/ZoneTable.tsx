import './ZoneTable.css';
import type { CoverageInterval, ZoneResult } from '../../records/comparison.ts';
import { changeMeaning, changeWord } from '../../studio/proofs/changeWords.ts';
import { zoneLetter } from '../managers/zonePlace.ts';
import { say } from '../words/say.ts';
import { told } from '../words/told.ts';
import { coverageParts } from './figures.ts';
import { HatchSwatch } from './HatchSwatch.tsx';

/** Under this share of a zone on the sheet nothing is said of its print. */
const offTheSheet = 0.05;

/** Zones with their coverage drawn and printed in per cent, ±, and what became of them. Picking one shows its place. */
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
          <th scope="col">{say('zone')}</th>
          <th scope="col">{say('drawn')}</th>
          <th scope="col">{say('print')}</th>
          <th scope="col">
            <span className="unseen">{say('what became of it')}</span>
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
                <b>{zoneLetter(index)}</b> <span>{zone.name.replaceAll(' %', '\u00a0%')}</span>
              </button>
            </th>
            <td>
              <Coverage reading={zone.drawn} />
            </td>
            {zone.printed === null && zone.covered < offTheSheet ? (
              <td colSpan={2} className="soft">
                {say('off the sheet')}
              </td>
            ) : (
              <>
                <td>
                  <Coverage reading={zone.printed} />
                </td>
                <Became change={zone.change} />
              </>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Became({ change }: Pick<ZoneResult, 'change'>) {
  return (
    <td className={change === 'held' ? undefined : 'changed'} title={told(changeMeaning(change))}>
      <span>
        {told(changeWord(change))}
        {change !== 'held' && <HatchSwatch kind={change} small />}
      </span>
    </td>
  );
}

function Coverage({ reading }: { reading: CoverageInterval | null }) {
  const figure = coverageParts(reading);
  if (!figure) return <span className="soft">{say('not known')}</span>;
  return (
    <>
      {figure.value} <small>{figure.plusMinus}</small>
    </>
  );
}
