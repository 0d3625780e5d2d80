import type { TestFactor } from '../../../records/testStone.ts';
import type { AuditFinding } from '../../../records/testStoneAnswer.ts';
import type { TrialPatchRow } from '../answer/trialPatches.ts';
import { groupsOf, levelNames, trialUnits, unitOf } from '../answer/trialUnits.ts';

/** Share of a place's spread that treatments may explain before a slope over the stone doubles an interval: 1 − 1/2². */
const leaning = 0.75;

const ends = [
  { of: 0, between: 'left and right', way: 'across' },
  { of: 1, between: 'head and tail', way: 'along' },
] as const;

/** Treatments whose places follow them, so that a slope over the stone would look like their effect. */
export function auditPlaces(rows: readonly TrialPatchRow[], factors: readonly TestFactor[]): AuditFinding[] {
  return factors.flatMap((factor) => {
    const units = placedUnits(rows, factor);
    const levels = levelNames(rows, factor.name).length;
    const blocks = new Set(units.map(({ block }) => block)).size;
    // One unit a level lies where it lies: that is said as a missing replicate.
    if (levels < 2 || units.length <= levels) return [];
    if (blocks > 1 && sameOrder(units)) return [alwaysThere(factor.name)];
    return ends.flatMap(({ of, between, way }): AuditFinding[] => {
      const share = explained(units, of);
      if (share < leaning) return [];
      return [
        {
          code: share > 0.999 ? 'place' : 'place-leans',
          weight: share > 0.999 ? 'no-cause' : 'caution',
          factors: [factor.name],
          message:
            share > 0.999
              ? `Where a patch lies ${way} the stone says which ${factor.name} it got: no cause can be assigned between ${factor.name} and ${between}.`
              : `What was tried of ${factor.name} leans to different ends: ${between} explain part of what looks like ${factor.name}.`,
          test: `Draw the places of each ${factor.name} by lot anew on another stone, or turn that stone round.`,
        },
      ];
    });
  });
}

function alwaysThere(factor: string): AuditFinding {
  return {
    code: 'place',
    weight: 'no-cause',
    factors: [factor],
    message: `Every ${factor} lies at the same place each time: no cause can be assigned between ${factor} and its place.`,
    test: `Draw the places of each ${factor} by lot, anew for every strip and stone.`,
  };
}

interface PlacedUnit {
  readonly block: string;
  readonly level: string;
  /** Middle, from the middle of its stone, mm. */
  readonly at: readonly [number, number];
  /** Its patches. */
  readonly weight: number;
}

/** Every unit that a factor was given to, with where it lies, within the next larger unit. */
function placedUnits(rows: readonly TrialPatchRow[], factor: TestFactor): PlacedUnit[] {
  const unit = unitOf(factor, rows);
  const larger = trialUnits
    .slice(0, trialUnits.indexOf(unit))
    .findLast((size) => groupsOf(rows, size).length < groupsOf(rows, unit).length);
  return groupsOf(rows, unit).map((own) => ({
    block: larger === undefined ? 'all' : own[0]!.units[larger],
    level: own[0]!.levels[factor.name]!,
    at: [0, 1].map(
      (k) => own.reduce((sum, row) => sum + row.centreMm[k]! - row.sizeMm[k]! / 2, 0) / own.length,
    ) as unknown as readonly [number, number],
    weight: own.length,
  }));
}

/** Do the levels stand in one order in every block that holds them? */
function sameOrder(units: readonly PlacedUnit[]): boolean {
  const blocks = [...new Set(units.map(({ block }) => block))].map((block) =>
    units.filter((one) => one.block === block),
  );
  if (blocks.some((own) => own.length < 2)) return false;
  const orders = blocks.map((own) =>
    own
      .toSorted((a, b) => Math.round(a.at[1] - b.at[1]) || a.at[0] - b.at[0])
      .map(({ level }) => level)
      .join('\n'),
  );
  return new Set(orders).size === 1;
}

/** Share of the spread of places, within blocks, that lies between levels. */
function explained(units: readonly PlacedUnit[], axis: 0 | 1): number {
  const meanBy = (keyOf: (unit: PlacedUnit) => string, measureOf: (unit: PlacedUnit) => number) => {
    const sums = new Map<string, { sum: number; count: number }>();
    for (const unit of units) {
      const known = sums.get(keyOf(unit)) ?? { sum: 0, count: 0 };
      sums.set(keyOf(unit), { sum: known.sum + measureOf(unit), count: known.count + 1 });
    }
    return (unit: PlacedUnit) => {
      const { sum, count } = sums.get(keyOf(unit))!;
      return sum / count;
    };
  };
  const blockMean = meanBy(
    ({ block }) => block,
    ({ at }) => at[axis],
  );
  const within = (unit: PlacedUnit) => unit.at[axis] - blockMean(unit);
  const all = units.reduce((sum, unit) => sum + within(unit) ** 2, 0);
  // Blocks that lie at one place on this axis have no slope to mistake for anything.
  if (all < units.length) return 0;
  const levelMean = meanBy(({ level }) => level, within);
  return units.reduce((sum, unit) => sum + levelMean(unit) ** 2, 0) / all;
}
