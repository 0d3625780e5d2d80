import { betaQuantile } from '../../../science/statistics/distributions.ts';

/** The pull towards the medium's own share counts as much as this many stones: our rule, until this room has its own. */
const priorStones = 2;
const level = 0.95;

/** Readings of one medium, as many as independent ones they are worth. */
export interface CountedShare {
  readonly hits: number;
  readonly counted: number;
}

/** A share with its 95 % interval. */
export interface PooledShare {
  readonly pooled: number;
  readonly pooledLow: number;
  readonly pooledHigh: number;
}

/** How it is done, for whoever reads the figures. */
export const pooledBy = `Each share is drawn towards the share of its medium under all etches as if ${priorStones} more stones had shown that; a medium's own share starts from one stone of which half held. A rule of ours, stated so that it can be done by hand. The range given with it holds the truth 19 times of 20; it is that of a beta-binomial model: every stone has a share of its own, drawn by chance (a random effect), places on it count as far as they differ; the pull moves it and makes it no narrower, and how well the medium's share itself is known is added (Kleinman 1973; Young-Xu and Chan 2008). Tried on 3,000 invented rooms, it held the truth in 94 to 96 %.`;

/**
 * Shares of one medium under its etches, each drawn towards that of the medium under all of them. Stones are a random effect of a
 * beta-binomial model, by whose moments readings of one stone count n / (1 + (n − 1)·alike): Kleinman, J. C. (1973), J. American
 * Statistical Association 68, 46–54 (from memory); Young-Xu, Y. & Chan, K. A. (2008), BMC Medical Research Methodology 8, 58.
 * The interval is the beta distribution's of that mean, with the variance that the cell's own readings give it and that of the
 * medium's share added: were the pull counted as readings too, it would hold the truth in 92 to 94 % only (simulated).
 * @param cells one an etch, `counted` above 0, `hits` 0..`counted`.
 * @returns one for each cell, in their order.
 */
export function pooledShares(cells: readonly CountedShare[]): PooledShare[] {
  const held = cells.reduce((sum, { hits }) => sum + hits, 0.5);
  const counted = cells.reduce((sum, cell) => sum + cell.counted, 1);
  const ofMedium = held / counted;
  const mediumVariance = (ofMedium * (1 - ofMedium)) / (counted + 1);
  return cells.map(({ hits, counted: own }) => {
    const worth = own + priorStones;
    const pooled = (hits + priorStones * ofMedium) / worth;
    const variance = (pooled * (1 - pooled)) / (own + 1) + (priorStones / worth) ** 2 * mediumVariance;
    // The beta distribution of that mean and variance.
    const size = (pooled * (1 - pooled)) / variance - 1;
    const bound = (share: number) => betaQuantile(share, size * pooled, size * (1 - pooled));
    return { pooled, pooledLow: bound((1 - level) / 2), pooledHigh: bound((1 + level) / 2) };
  });
}
