import { type Cause, causes, type FeatureName, type Suspect } from '../../../records/suspects.ts';
import { calibration, elseCalibration } from './calibration.ts';
import { causeTable, explainingWeight, startingLogOdds, unevenCauses } from './causeTable.ts';

/** What one feature adds to a cause. */
export interface FeatureWeight {
  readonly feature: FeatureName;
  readonly presence: number;
  readonly weight: number;
}

/** One suspect's sum. */
export interface Weighed {
  readonly suspect: Suspect;
  readonly weights: readonly FeatureWeight[];
  /** Log odds of the start and of outcomes of tests. */
  readonly start: number;
  readonly fromTests: number;
  readonly logOdds: number;
  readonly chance: number;
}

const logistic = (x: number) => 1 / (1 + Math.exp(-x));

/** Chance of a cause, 0..1, at a sum of log odds, natural logarithms, as calibrated on the fitting simulations. */
export function chanceAt(logOdds: number): number {
  return logistic(calibration.scale * logOdds + calibration.shift);
}

/**
 * Judges every cause by itself: weights of evidence add (Good 1950, from memory). Features that were not read add nothing.
 * @param start log odds that each cause starts from.
 * @param fromTests log odds that outcomes of separating tests add.
 */
export function weighCauses(
  presence: ReadonlyMap<FeatureName, number>,
  start: (cause: Cause) => number = () => startingLogOdds,
  fromTests: (cause: Cause) => number = () => 0,
): readonly Weighed[] {
  return causes.map((cause) => {
    const weights = Object.entries(causeTable[cause].weights).flatMap(([name, [seen, absent]]) => {
      const feature = name as FeatureName;
      const share = presence.get(feature);
      return share === undefined
        ? []
        : [{ feature, presence: share, weight: share * seen + (1 - share) * absent }];
    });
    const logOdds = weights.reduce((sum, { weight }) => sum + weight, start(cause)) + fromTests(cause);
    return {
      suspect: cause,
      weights,
      start: start(cause),
      fromTests: fromTests(cause),
      logOdds,
      chance: chanceAt(logOdds),
    };
  });
}

/** What "something else" starts from, and what a fully unexplained sign adds. Our rule. */
const elseStart = -3;
const elsePull = 7;
/** How much of an unevenness a likely cause explains that leaves some by itself. Our rule. */
const partlyExplained = 0.75;

/**
 * "Something else": strong where a sign is seen that no likely cause explains. Unevenness of no known kind counts less beside a likely
 * cause that leaves some of its own; a slope, bands or a line leave none.
 */
export function weighElse(presence: ReadonlyMap<FeatureName, number>, weighed: readonly Weighed[]): Weighed {
  const likeliest = (of: readonly Cause[]) =>
    Math.max(
      0,
      ...weighed.filter(({ suspect }) => of.includes(suspect as Cause)).map(({ chance }) => chance),
    );
  let most = 0;
  const weights: FeatureWeight[] = [];
  for (const [feature, share] of presence) {
    if (isHelper(feature)) continue;
    const unexplained = weighed.reduce(
      (left, { suspect, chance }) =>
        (causeTable[suspect as Cause].weights[feature]?.[0] ?? 0) >= explainingWeight
          ? left * (1 - chance)
          : left,
      1 - partlyExplained * likeliest(unevenCauses[feature] ?? []),
    );
    // What is only half seen needs no explanation yet.
    const plain = Math.max(0, (share - 0.35) / 0.65);
    most = Math.max(most, plain * unexplained);
    if (share > 0.5 && unexplained > 0.5)
      weights.push({ feature, presence: share, weight: elsePull * share * unexplained });
  }
  const logOdds = elseStart + elsePull * most;
  return {
    suspect: 'something-else',
    weights,
    start: elseStart,
    fromTests: 0,
    logOdds,
    chance: logistic(elseCalibration.scale * logOdds + elseCalibration.shift),
  };
}

/** Features that describe another one or the log: alone they are no fault that needs an explanation. */
function isHelper(feature: FeatureName): boolean {
  return helpers.includes(feature);
}

const helpers: readonly FeatureName[] = [
  'patchesStay',
  'lightsReturn',
  'bareGrows',
  'darksGrow',
  'missingGrows',
  'etchOverrun',
  'etchShort',
  'baseSkipped',
  'powderSkipped',
  'borderSkipped',
  'rollUpShort',
  'ungummedPause',
  'stonePale',
  'smear',
  'streakDarker',
  'ghostRepeat',
];
