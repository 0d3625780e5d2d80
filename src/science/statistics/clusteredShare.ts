/** How many of a cluster's readings showed it. */
export interface Cluster {
  readonly hits: number;
  readonly trials: number;
}

/**
 * How alike readings of one cluster are, 0 (independent) to 1 (all the same), by the analysis of variance of 0 and 1,
 * pooled over groups that may differ in their share.
 * Ridout, M. S., Demétrio, C. G. B. & Firth, D. (1999), Biometrics 55, 137–148, doi 10.1111/j.0006-341X.1999.00137.x (the ANOVA
 * estimator among those compared).
 * @param groups clusters of one treatment each.
 * @returns null where no cluster holds two readings, or no group two clusters, or all readings are the same.
 */
export function intraclassCorrelation(groups: readonly (readonly Cluster[])[]): number | null {
  let [between, within, betweenDf, withinDf, sizeSum] = [0, 0, 0, 0, 0];
  for (const group of groups) {
    const filled = group.filter(({ trials }) => trials > 0);
    const trials = sum(filled.map((cluster) => cluster.trials));
    if (filled.length < 2) continue;
    const share = sum(filled.map((cluster) => cluster.hits)) / trials;
    for (const cluster of filled) {
      const own = cluster.hits / cluster.trials;
      between += cluster.trials * (own - share) ** 2;
      within += cluster.hits * (1 - own);
    }
    betweenDf += filled.length - 1;
    withinDf += trials - filled.length;
    sizeSum += trials - sum(filled.map((cluster) => cluster.trials ** 2)) / trials;
  }
  if (betweenDf === 0 || withinDf === 0 || between + within === 0) return null;
  const size = sizeSum / betweenDf;
  const [upper, lower] = [between / betweenDf, within / withinDf];
  const alike = (upper - lower) / (upper + (size - 1) * lower);
  return Number.isFinite(alike) ? Math.min(1, Math.max(0, alike)) : null;
}

/**
 * How many independent readings clustered ones are worth: Σ over clusters of n / (1 + (n − 1)·alike), weights as counted.
 * Kish, L. (1965), Survey Sampling, section 8.2 (from memory), for unequal clusters read cluster by cluster.
 * @param alike 0..1. @returns between the number of clusters and that of readings; the share weighs clusters by it.
 */
export function effectiveCount(clusters: readonly Cluster[], alike: number) {
  const worths = clusters.map(({ trials }) => (trials === 0 ? 0 : trials / (1 + (trials - 1) * alike)));
  const counted = sum(worths);
  const hits = sum(clusters.map(({ hits, trials }, k) => (trials === 0 ? 0 : (worths[k]! * hits) / trials)));
  return { counted, hits };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
