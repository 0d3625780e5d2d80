import { describe, expect, it } from 'vitest';
import { betaBelow } from './betaDistribution.ts';
import { betaQuantile, studentTail } from './distributions.ts';
import { gammaAbove } from './gammaDistribution.ts';
import { integrate } from './gaussLegendre.ts';
import { logGamma } from './logGamma.ts';
import { normalUpperTail } from './normalTail.ts';

/** What each claims to reach. */
const relative = 1e-12;
const near = (computed: number, expected: number) =>
  expect(Math.abs(computed - expected), `${computed} for ${expected}`).toBeLessThanOrEqual(
    relative * Math.max(1, Math.abs(expected)),
  );

// Marks that follow by algebra, so that they need no table.
describe('special functions', () => {
  it('ln Γ: factorials, and half numbers by Γ(½) = √π', () => {
    let factorial = 1;
    for (let n = 1; n <= 60; n++) {
      near(logGamma(n), Math.log(factorial));
      factorial *= n;
    }
    let half = Math.sqrt(Math.PI);
    for (let n = 0; n <= 60; n++) {
      near(logGamma(n + 0.5), Math.log(half));
      half *= n + 0.5;
    }
  });

  it('beta: powers where one parameter is 1, sums of binomial chances for whole ones, both ways round', () => {
    for (const x of [0, 1e-9, 0.05, 0.3, 0.5, 0.77, 0.999, 1])
      for (const power of [0.2, 1, 3.5, 40]) {
        near(betaBelow(x, power, 1), x ** power);
        near(betaBelow(x, 1, power), 1 - (1 - x) ** power);
        // 1 − x has lost the last digits of so small an x
        if (x !== 1e-9) near(betaBelow(x, power, 2.5) + betaBelow(1 - x, 2.5, power), 1);
      }
    for (const [trials, least] of [
      [5, 2],
      [12, 11],
      [30, 7],
    ] as const)
      for (const x of [0.1, 0.4, 0.9]) {
        let chance = 0;
        for (let hits = least; hits <= trials; hits++)
          chance += binomial(trials, hits) * x ** hits * (1 - x) ** (trials - hits);
        near(betaBelow(x, least, trials - least + 1), chance);
      }
  });

  it('beta quantile: roots where one parameter is 1, the half of an even one, and back through the chance', () => {
    for (const chance of [0, 1e-6, 0.025, 0.5, 0.9, 1])
      for (const power of [0.3, 1, 4, 25]) {
        near(betaQuantile(chance, power, 1), chance ** (1 / power));
        near(betaQuantile(chance, 1, power), 1 - (1 - chance) ** (1 / power));
        near(betaBelow(betaQuantile(chance, power, 2.5), power, 2.5), chance);
      }
    near(betaQuantile(0.5, 7, 7), 0.5);
    for (const [chance, alpha, beta] of [
      [-0.1, 1, 1],
      [1.1, 1, 1],
      [0.5, 0, 1],
      [0.5, 1, -1],
    ] as const)
      expect(betaQuantile(chance, alpha, beta)).toBeNaN();
  });

  it('tail of Student’s t: in closed form with 1 and 2 degrees of freedom, the normal one with infinitely many', () => {
    for (const score of [0, 0.4, 1, 2.5, 12]) {
      near(studentTail(score, 1), 0.5 - Math.atan(score) / Math.PI);
      near(studentTail(score, 2), 0.5 - score / (2 * Math.sqrt(2 + score * score)));
      near(studentTail(score, Infinity), normalUpperTail(score));
    }
    expect(studentTail(-1, 5)).toBeNaN();
    expect(studentTail(1, 0)).toBeNaN();
  });

  it('gamma: sums of Poisson chances for whole shapes, on both sides of the mean', () => {
    for (const shape of [1, 2, 5, 17])
      for (const x of [0, 0.01, 1, 4.9, 5.1, 30]) {
        let term = Math.exp(-x);
        let chance = 0;
        for (let k = 0; k < shape; k++) {
          chance += term;
          term *= x / (k + 1);
        }
        near(gammaAbove(x, shape), chance);
      }
  });

  it('the integral is exact up to degree 2·points − 1 and no further', () => {
    for (const points of [1, 2, 3, 8])
      for (const panels of [1, 3]) {
        const degree = 2 * points - 1;
        near(
          integrate((at) => (degree + 1) * at ** degree, 1, 2, panels, points),
          2 ** (degree + 1) - 1,
        );
      }
    expect(Math.abs(integrate((at) => 3 * at ** 2, 0, 2, 1, 1) - 8)).toBeGreaterThan(1);
    near(integrate(Math.sin, 0, Math.PI, 2), 2);
  });
});

function binomial(trials: number, hits: number): number {
  let ways = 1;
  for (let k = 1; k <= hits; k++) ways *= (trials - hits + k) / k;
  return ways;
}
