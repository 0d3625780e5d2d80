import type { TestFactor } from '../../../records/testStone.ts';
import type { HoldOdds } from '../../../records/testStoneAnswer.ts';
import { normalQuantile } from '../../../science/statistics/distributions.ts';
import { fitProportionalOdds } from '../../../science/statistics/ordinal/proportionalOdds.ts';
import type { StandingSets } from '../audit/standingSets.ts';
import type { TrialPatchRow } from './trialPatches.ts';
import { countUnits, groupsOf, levelNames, unitOf } from './trialUnits.ts';

/** Worst first; a filled patch took ink and is no step of this ladder. */
const ladder = ['lost', 'weak', 'held'] as const;
/**
 * A level's log odds are held to lie within about 2 × 2.5 of the others', so that one where all held stays finite: our rule,
 * as wide as Gelman, A. et al. (2008) advise, Annals of Applied Statistics 2, 1360–1383, doi 10.1214/08-AOAS191.
 */
const ridge = 1 / 2.5 ** 2;

/**
 * Odds of a better hold between the levels of each factor, by a penalised proportional-odds model. Patches of one unit that a
 * factor was given to count together as far as they are alike.
 * @param factors those of which some levels can be compared. @param standing which ones.
 * @param alike how alike patches of one unit hold, 0..1.
 * @param controlOf the level that others are compared with; null: the first.
 */
export function holdOdds(
  rows: readonly TrialPatchRow[],
  factors: readonly TestFactor[],
  standing: StandingSets,
  alike: number,
  controlOf: (factor: string) => string | null,
): HoldOdds[] {
  const read = rows.filter(({ hold }) => hold !== null && hold !== 'filled');
  const used = ladder.filter((step) => read.some(({ hold }) => hold === step));
  const varied = factors.filter(({ name }) => levelNames(read, name).length > 1);
  if (used.length < 2) return [];
  return varied.flatMap((factor) =>
    oddsOf(read, varied, factor, standing.get(factor.name) ?? [], used, alike, controlOf(factor.name)),
  );
}

function oddsOf(
  rows: readonly TrialPatchRow[],
  factors: readonly TestFactor[],
  factor: TestFactor,
  sets: readonly (readonly string[])[],
  used: readonly string[],
  alike: number,
  control: string | null,
): HoldOdds[] {
  const levels = levelNames(rows, factor.name);
  const unit = unitOf(factor, rows);
  if (countUnits(rows, unit) <= levels.length) return [];
  const columns = factors.flatMap(({ name }) => levelNames(rows, name).map((level) => ({ name, level })));
  const sizes = new Map(groupsOf(rows, unit).flatMap((own) => own.map((row) => [row, own.length] as const)));
  const fit = fitProportionalOdds(
    rows.map((row) => columns.map(({ name, level }) => Number(row.levels[name] === level))),
    rows.map(({ hold }) => used.indexOf(hold!)),
    used.length,
    columns.map(() => ridge),
    rows.map((row) => 1 / (1 + (sizes.get(row)! - 1) * alike)),
  );
  if (!fit) return [];
  const at = (level: string) => columns.findIndex((one) => one.name === factor.name && one.level === level);
  const reach = normalQuantile(0.975);
  return sets.flatMap((set) => {
    const here = set.filter((level) => levels.includes(level));
    const base = control !== null && here.includes(control) ? control : here[0];
    return here.flatMap((level) => {
      if (base === undefined || level === base) return [];
      const [i, j] = [at(level), at(base)];
      const difference = fit.coefficients[i]! - fit.coefficients[j]!;
      const variance = fit.covariance[i]![i]! + fit.covariance[j]![j]! - 2 * fit.covariance[i]![j]!;
      const spread = reach * Math.sqrt(variance);
      const odds = [difference, difference - spread, difference + spread].map(Math.exp);
      return [{ factor: factor.name, level, against: base, odds: odds[0]!, low: odds[1]!, high: odds[2]! }];
    });
  });
}
