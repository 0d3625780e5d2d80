import type { TestFactor } from '../../../records/testStone.ts';
import type { AuditFinding, TrialUnit } from '../../../records/testStoneAnswer.ts';
import type { TrialPatchRow } from '../answer/trialPatches.ts';
import { countUnits, levelNames, trialUnits, unitOf } from '../answer/trialUnits.ts';
import { listWords } from '../listWords.ts';
import { comparableSets } from './comparable.ts';

/** Is every treatment repeated, on units of its own, on stones enough? */
export function auditReplicates(
  rows: readonly TrialPatchRow[],
  factors: readonly TestFactor[],
  prints: number,
): AuditFinding[] {
  const stones = countUnits(rows, 'stone');
  const varied = factors.filter(({ name }) => levelNames(rows, name).length > 1);
  const found = varied.flatMap((factor) => [
    ...replicatesOf(rows, factor),
    ...(['stone', 'strip'] as const).flatMap((size) => blockApart(rows, factor, size)),
  ]);
  if (stones === 1)
    found.push({
      code: 'one-stone',
      weight: 'caution',
      factors: [],
      message: 'All patches lie on one stone: what holds on it may not hold on another.',
      test: 'Repeat it on a second and a third stone, with places drawn by lot anew.',
    });
  else if (stones === 2)
    found.push({
      code: 'few-replicates',
      weight: 'caution',
      factors: [],
      message: 'Two stones are few: how far a third would differ is hardly known.',
      test: 'Repeat it on a third stone and a fourth.',
    });
  if (prints > 1)
    found.push({
      code: 'prints-not-replicates',
      weight: 'note',
      factors: [],
      message: `${prints} prints of one stone were read: they tell how the press prints, and do not count as more stones.`,
      test: null,
    });
  return found;
}

function replicatesOf(rows: readonly TrialPatchRow[], factor: TestFactor): AuditFinding[] {
  const unit = unitOf(factor, rows);
  const counts = levelNames(rows, factor.name).map((level) =>
    countUnits(
      rows.filter((row) => row.levels[factor.name] === level),
      unit,
    ),
  );
  const most = Math.max(...counts);
  const patches = rows.length > countUnits(rows, unit);
  if (most === 1)
    return [
      {
        code: 'no-replicate',
        weight: 'no-cause',
        factors: [factor.name],
        message: `Every ${factor.name} was given to one ${unit} only: how far two ${unitWords[unit]} treated alike differ was never seen, so no cause can be assigned to a difference between them.${patches ? ` More patches in a ${unit} don't help.` : ''}`,
        test: `Give every ${factor.name} to two ${unitWords[unit]} at least, better four, on different stones.`,
      },
    ];
  if (Math.min(...counts) <= 2)
    return [
      {
        code: 'few-replicates',
        weight: 'caution',
        factors: [factor.name],
        message: `Some ${factor.name} rests on ${Math.min(...counts) === 1 ? `one ${unit}` : `two ${unitWords[unit]}`}: a difference must be large to be told from luck.`,
        test: `Repeat every ${factor.name} on four ${unitWords[unit]} or more.`,
      },
    ];
  return [];
}

/** Levels that lie on different stones or strips altogether, so that these stand between them. */
function blockApart(
  rows: readonly TrialPatchRow[],
  factor: TestFactor,
  size: 'stone' | 'strip',
): AuditFinding[] {
  const unit = unitOf(factor, rows);
  if (trialUnits.indexOf(unit) <= trialUnits.indexOf(size)) return [];
  if (size === 'strip' && countUnits(rows, 'strip') === countUnits(rows, unit)) return [];
  const sets = comparableSets(rows.map((row) => [row.levels[factor.name]!, row.units[size]]));
  // Sets that lie on several such units each have those to show how far they differ.
  const alone = sets.filter(({ partners }) => partners.length === 1);
  if (sets.length < 2 || alone.length === 0) return [];
  const [first, second] = [alone[0]!, sets.find((set) => set !== alone[0])!];
  return [
    {
      code: 'block-apart',
      weight: 'no-cause',
      factors: [factor.name],
      sets: sets.map(({ names }) => names),
      message: `${listWords(first.names)} lie on one ${size}, ${listWords(second.names)} on another: no cause can be assigned between ${factor.name} and ${size}.`,
      test: `Put ${first.names[0]!} and ${second.names[0]!} side by side on every ${size}.`,
    },
  ];
}

const unitWords: Readonly<Record<TrialUnit, string>> = {
  stone: 'stones',
  strip: 'strips',
  square: 'squares',
  patch: 'patches',
};
