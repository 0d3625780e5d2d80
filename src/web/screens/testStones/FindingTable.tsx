import type { PatchFinding } from '../../../records/patchReading.ts';
import type { TestStone } from '../../../records/testStone.ts';
import { findingWords, percentWords } from '../../managers/testStones/holdWords.ts';
import { findingName } from '../../managers/testStones/patchLetters.ts';
import { say } from '../../words/say.ts';
import { told, toldOr } from '../../words/told.ts';
import { PushedTable } from './PushedTable.tsx';

/** Every patch on a line: what it got, what was read. */
export function FindingTable({
  stone,
  findings,
  picked,
  onPick,
}: {
  stone: TestStone;
  findings: readonly PatchFinding[];
  picked: string | null;
  onPick: (patch: string) => void;
}) {
  const factors = stone.factors.map(({ name }) => name);
  return (
    <PushedTable label={say('Every patch, a table to be pushed sideways')}>
      <caption className="unseen">{say('What each patch got and what became of it')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('Patch')}</th>
          <th scope="col">{say('What became of it')}</th>
          {factors.map((name) => (
            <th key={name} scope="col">
              {told(name)}
            </th>
          ))}
          <th scope="col">{say('Drawn')}</th>
          <th scope="col">{say('Printed')}</th>
        </tr>
      </thead>
      <tbody>
        {findings.map((finding) => (
          <tr key={finding.patch} className={finding.patch === picked ? 'test-stone-row-picked' : undefined}>
            <th scope="row">
              <button type="button" onClick={() => onPick(finding.patch)}>
                {findingName(finding)}
              </button>
            </th>
            <td>
              {findingWords(finding)}
              {finding.holdBy === 'hand' && <span className="soft"> {say('by hand')}</span>}
            </td>
            {factors.map((name) => (
              <td key={name}>
                {toldOr(finding.treatment[name]) ?? <span className="soft">{say('not known')}</span>}
              </td>
            ))}
            <td className="test-stone-figure">{percentWords(finding.camera.drawn)}</td>
            <td className="test-stone-figure">{percentWords(finding.camera.printed)}</td>
          </tr>
        ))}
      </tbody>
    </PushedTable>
  );
}
