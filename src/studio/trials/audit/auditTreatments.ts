import type { TestFactor } from '../../../records/testStone.ts';
import type { AuditFinding } from '../../../records/testStoneAnswer.ts';
import { rankOf } from '../../../science/statistics/mixed/rankOf.ts';
import type { TrialPatchRow } from '../answer/trialPatches.ts';
import { levelNames } from '../answer/trialUnits.ts';
import { listWords } from '../listWords.ts';
import { type ComparableSet, comparableSets } from './comparable.ts';

/** Treatments that never vary apart from one another, and combinations that were never tried. */
export function auditTreatments(
  rows: readonly TrialPatchRow[],
  factors: readonly TestFactor[],
): AuditFinding[] {
  const varied = factors.filter(({ name }) => levelNames(rows, name).length > 1);
  const pairs = varied.flatMap((one, i) =>
    varied.slice(i + 1).map((other) => [one.name, other.name] as const),
  );
  const apart = pairs.flatMap(([one, other]) => neverApart(rows, one, other));
  return [
    ...apart,
    ...(apart.length === 0
      ? jointlyApart(
          rows,
          varied.map(({ name }) => name),
        )
      : []),
    ...pairs.flatMap(([one, other]) => missingCells(rows, one, other)),
  ];
}

function neverApart(rows: readonly TrialPatchRow[], one: string, other: string): AuditFinding[] {
  const sets = comparableSets(rows.map((row) => [row.levels[one]!, row.levels[other]!]));
  if (sets.length < 2) return [];
  const single = sets.every(({ names, partners }) => names.length === 1 && partners.length === 1);
  const [first, second] = sets;
  const told = single
    ? `Each ${one} came with its own ${other} (${sets.map(({ names, partners }) => `${names[0]} with ${partners[0]}`).join(', ')})`
    : `${listWords(first!.names)} came only with ${listWords(first!.partners)}, ${listWords(second!.names)} only with ${listWords(second!.partners)}`;
  return [
    {
      code: 'never-apart',
      weight: 'no-cause',
      factors: [one, other],
      message: `${told}: no cause can be assigned between ${one} and ${other}.${stillWords(sets)}`,
      test: `Try ${first!.names[0]!} and ${second!.names[0]!} each with ${first!.partners[0]!} and with ${second!.partners[0]!}, places drawn by lot, on two stones or more.`,
    },
  ];
}

/** What can be compared all the same: whatever came with the same things. */
function stillWords(sets: readonly ComparableSet[]): string {
  const left = sets.flatMap(({ names, partners }) =>
    [names, partners].filter((some) => some.length > 1).map((some) => listWords(some)),
  );
  return left.length === 0 ? '' : ` What stands is a comparison within each of these: ${left.join('; ')}.`;
}

/** Three or more treatments of which none is tied to another one, but all together are. */
function jointlyApart(rows: readonly TrialPatchRow[], names: readonly string[]): AuditFinding[] {
  if (names.length < 3) return [];
  const levels = names.map((name) => levelNames(rows, name));
  const design = rows.map((row) => [
    1,
    ...names.flatMap((name, f) => levels[f]!.slice(1).map((level) => Number(row.levels[name] === level))),
  ]);
  if (rankOf(design) === design[0]!.length) return [];
  return [
    {
      code: 'jointly-apart',
      weight: 'no-cause',
      factors: names,
      message: `${listWords(names)} were changed together so that what two of them did says what the third was: no cause can be assigned among them.`,
      test: `Vary one of ${listWords(names)} while the others stay as they are.`,
    },
  ];
}

function missingCells(rows: readonly TrialPatchRow[], one: string, other: string): AuditFinding[] {
  const tried = new Set(rows.map((row) => JSON.stringify([row.levels[one], row.levels[other]])));
  const ones = levelNames(rows, one);
  const others = levelNames(rows, other);
  const missing = ones.flatMap((a) =>
    others.filter((b) => !tried.has(JSON.stringify([a, b]))).map((b) => `${a} with ${b}`),
  );
  if (missing.length === 0) return [];
  const shown = missing.slice(0, 4).join(', ');
  const more = missing.length > 4 ? ` and ${missing.length - 4} more` : '';
  return [
    {
      code: 'cells-missing',
      weight: 'caution',
      factors: [one, other],
      message: `Never tried together: ${shown}${more}. Whether ${one} acts alike at every ${other} is not answered.`,
      test: `Draw the combinations that are missing: ${shown}${more}.`,
    },
  ];
}
