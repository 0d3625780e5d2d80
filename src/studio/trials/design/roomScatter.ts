import type { TestStoneFindings, TrialUnit } from '../../../records/testStoneAnswer.ts';
import type { RoomScatter, SeenScatter, TrialScatter } from '../../../records/trialDesign.ts';
import { chiSquareQuantile } from '../../../science/statistics/distributions.ts';
import { independentColumns } from '../../../science/statistics/mixed/estimable.ts';
import { fitVarianceComponents } from '../../../science/statistics/mixed/varianceComponents.ts';
import { toneStrata } from '../answer/toneStrata.ts';
import { type TrialPatchRow, trialPatches } from '../answer/trialPatches.ts';
import { countUnits } from '../answer/trialUnits.ts';
import { usualScatter } from './trialPower.ts';

/** Fewer units treated alike than three tell nothing worth planning by: our rule. */
const leastComparisons = 2;
/** More patches than these, the newest first, say little more and take long. */
export const mostScatterPatches = 240;

/**
 * How far stones, strips of one stone and patches of one strip differ in this room when treated alike: standard deviations of what was
 * printed less what was drawn, by restricted maximum likelihood over all kept test stones, with every combination of treatments
 * taken out.
 * @param stones the newest first.
 */
export function roomScatter(stones: readonly TestStoneFindings[]): RoomScatter {
  const rows = stones
    .flatMap((stone) => trialPatches([stone]).rows)
    .filter(({ printed, drawn }) => printed !== null && drawn !== null)
    .slice(0, mostScatterPatches);
  const seen = seenIn(rows);
  const remembered = (['stone', 'strip'] as const).filter((of) => seen[of].value === null);
  const part = (of: keyof TrialScatter) => seen[of].value ?? usualScatter.middle[of];
  return {
    schema: 'stonetone/room-scatter/1',
    ...seen,
    stones: countUnits(rows, 'stone'),
    // Without any scatter of patches every difference would count.
    scatter: seen.patch.value
      ? { stone: part('stone'), strip: part('strip'), patch: seen.patch.value }
      : null,
    remembered,
  };
}

function seenIn(rows: readonly TrialPatchRow[]): Readonly<Record<keyof TrialScatter, SeenScatter>> {
  const unknown = (of: TrialUnit, comparisons = 0): SeenScatter => ({
    value: null,
    low: null,
    high: null,
    units: countUnits(rows, of),
    comparisons,
  });
  const nothing = { stone: unknown('stone'), strip: unknown('strip'), patch: unknown('square') };
  if (rows.length < 3) return nothing;
  const design = treatmentsOf(rows);
  const strata = toneStrata(rows, design);
  const tones = rows.map(({ printed, drawn }) => printed! - drawn!);
  const fit = fitVarianceComponents(
    design,
    tones,
    strata.groupings.map(({ grouping }) => grouping),
  );
  if (!fit) return nothing;
  const indexOf = (of: TrialUnit) => strata.groupings.findIndex((one) => one.of === of);
  const told = (of: TrialUnit, parts: readonly number[]): SeenScatter => {
    const comparisons = Math.max(0, strata.df[of]);
    if (comparisons < leastComparisons || parts.length === 0) return unknown(of, comparisons);
    const variance = parts.reduce((sum, k) => sum + fit.variances[k]!, 0);
    const spread = parts.reduce(
      (sum, k) => sum + parts.reduce((one, other) => one + fit.varianceCovariance.get(k, other), 0),
      0,
    );
    return { ...deviation(variance, spread, comparisons), units: countUnits(rows, of), comparisons };
  };
  const residual = fit.variances.length - 1;
  const own = (of: TrialUnit) => (indexOf(of) >= 0 ? [indexOf(of)] : []);
  // Steps of one square were laid as one: a square scatters by itself and by its steps.
  return {
    stone: told('stone', own('stone')),
    strip: told('strip', own('strip')),
    patch: told('square', [...own('square'), residual]),
  };
}

/**
 * A standard deviation with its 95 % interval. What units of a size show is their own variance and what their parts add; the sum is
 * known by its comparisons, as chi-square, and the parts' share is taken off both ends (so Williams, J. S. (1962), Biometrika 49,
 * 278–281, from memory, for balanced tables). A variance below 0 is none.
 * @param spread variance of `variance`.
 */
function deviation(
  variance: number,
  spread: number,
  comparisons: number,
): Pick<SeenScatter, 'value' | 'low' | 'high'> {
  const shown = Math.sqrt((spread * comparisons) / 2);
  const ofParts = shown - variance;
  const bound = (share: number) =>
    Math.sqrt(Math.max(0, (shown * comparisons) / chiSquareQuantile(share, comparisons) - ofParts));
  return { value: Math.sqrt(Math.max(0, variance)), low: bound(0.975), high: bound(0.025) };
}

/** One column a combination of treatments, whatever the test stone called them by. */
function treatmentsOf(rows: readonly TrialPatchRow[]): number[][] {
  const keys = rows.map(({ levels }) => JSON.stringify(Object.entries(levels).toSorted()));
  const names = [...new Set(keys)];
  const design = keys.map((key) => names.map((name) => Number(name === key)));
  const kept = independentColumns(design);
  return design.map((row) => kept.map((k) => row[k]!));
}
