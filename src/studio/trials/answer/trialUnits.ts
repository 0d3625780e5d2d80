import type { TestFactor } from '../../../records/testStone.ts';
import type { TrialUnit } from '../../../records/testStoneAnswer.ts';
import type { TrialPatchRow } from './trialPatches.ts';

/** From coarse to fine. */
export const trialUnits: readonly TrialUnit[] = ['stone', 'strip', 'square', 'patch'];

/**
 * What one replicate of a factor is: the largest thing that never got two of its levels, and never smaller than what the factor
 * was given to at once. Patches of one strip that was etched as one are one replicate of that etch, however many they are.
 * Hurlbert, S. H. (1984), Pseudoreplication and the design of ecological field experiments, Ecological Monographs 54, 187–211,
 * doi 10.2307/1942661.
 */
export function unitOf(factor: TestFactor, rows: readonly TrialPatchRow[]): TrialUnit {
  const told = trialUnits.indexOf(factor.givenTo);
  if (levelNames(rows, factor.name).length === 1) return factor.givenTo;
  const seen = trialUnits.findIndex((size) =>
    groupsOf(rows, size).every((group) => levelNames(group, factor.name).length === 1),
  );
  if (seen >= told && told >= 0) return trialUnits[told]!;
  // Of sizes that are one and the same here, such as a strip of one patch, the finest names it best.
  let finest = Math.max(0, seen);
  const here = countUnits(rows, trialUnits[finest]!);
  while (finest < told && countUnits(rows, trialUnits[finest + 1]!) === here) finest += 1;
  return trialUnits[finest]!;
}

/** The rows of each unit of one size, in the order in which they first come. */
export function groupsOf(rows: readonly TrialPatchRow[], size: TrialUnit): TrialPatchRow[][] {
  const groups = new Map<string, TrialPatchRow[]>();
  for (const row of rows) {
    const own = groups.get(row.units[size]);
    if (own) own.push(row);
    else groups.set(row.units[size], [row]);
  }
  return [...groups.values()];
}

/** How many units of a size hold these rows. */
export function countUnits(rows: readonly TrialPatchRow[], size: TrialUnit): number {
  return new Set(rows.map((row) => row.units[size])).size;
}

/** The levels of a factor among rows, in the order in which they first come. */
export function levelNames(rows: readonly TrialPatchRow[], factor: string): string[] {
  return [...new Set(rows.map((row) => row.levels[factor]!))];
}
