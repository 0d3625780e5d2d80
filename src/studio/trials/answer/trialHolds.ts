import type { TestFactor } from '../../../records/testStone.ts';
import type { TestStoneAnswer } from '../../../records/testStoneAnswer.ts';
import { alikeAmong, treatmentHold } from './holdShares.ts';
import type { TrialPatchRow } from './trialPatches.ts';
import { levelNames } from './trialUnits.ts';

/** What became of every combination of treatments that was tried, and of each level whatever the others were. */
export function trialHolds(
  rows: readonly TrialPatchRow[],
  factors: readonly TestFactor[],
): Pick<TestStoneAnswer, 'holds' | 'levelHolds' | 'alike'> {
  const cells = cellsOf(rows, factors);
  const alike = alikeAmong(cells);
  return {
    alike,
    holds: cells.map((own) => treatmentHold(own, treatmentOf(own[0]!, factors), alike)),
    levelHolds: factors.flatMap(({ name }) =>
      levelNames(rows, name).map((level) => ({
        factor: name,
        ...treatmentHold(
          rows.filter((row) => row.levels[name] === level),
          { [name]: level },
          alike,
        ),
      })),
    ),
  };
}

function treatmentOf(row: TrialPatchRow, factors: readonly TestFactor[]): Record<string, string> {
  return Object.fromEntries(factors.map(({ name }) => [name, row.levels[name]!]));
}

/** Rows of one combination each, in the order in which they first come. */
function cellsOf(rows: readonly TrialPatchRow[], factors: readonly TestFactor[]): TrialPatchRow[][] {
  const cells = new Map<string, TrialPatchRow[]>();
  for (const row of rows) {
    const key = JSON.stringify(factors.map(({ name }) => row.levels[name]));
    const own = cells.get(key);
    if (own) own.push(row);
    else cells.set(key, [row]);
  }
  return [...cells.values()];
}
