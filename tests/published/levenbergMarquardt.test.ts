import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { levenbergMarquardt } from '../../src/science/statistics/levenbergMarquardt.ts';
import { eachRow, publishedRows } from './rows.ts';

/** Certified to 11 digits; what this fit keeps of them, from either start. */
const parameterDigits = 2e-7;
/** Standard deviations, from slopes by differences. */
const deviationDigits = 2e-7;
const sumDigits = 1e-8;

type Curve = (x: number, b: readonly number[]) => number;

/** The curves of the certified sets, as NIST/ITL's Statistical Reference Datasets print them. */
const curves: Readonly<Record<string, Curve>> = {
  'y = b1*(1-exp(-b2*x))': (x, [b1, b2]) => b1! * (1 - Math.exp(-b2! * x)),
  'y = b1*x^b2': (x, [b1, b2]) => b1! * x ** b2!,
  'y = b1/(1+exp(b2-b3*x))': (x, [b1, b2, b3]) => b1! / (1 + Math.exp(b2! - b3! * x)),
  'y = b1/(1+exp(b2-b3*x))^(1/b4)': (x, [b1, b2, b3, b4]) => b1! / (1 + Math.exp(b2! - b3! * x)) ** (1 / b4!),
  'y = b1*(x^2+b2*x)/(x^2+b3*x+b4)': (x, [b1, b2, b3, b4]) =>
    (b1! * (x * x + b2! * x)) / (x * x + b3! * x + b4!),
  'y = exp(-b1*x)/(b2+b3*x)': (x, [b1, b2, b3]) => Math.exp(-b1! * x) / (b2! + b3! * x),
};

function observations(file: string): { x: number; y: number }[] {
  const lines = readFileSync(new URL(`data/${file}`, import.meta.url), 'utf8')
    .trim()
    .split(/\r?\n/);
  return lines.slice(1).map((line) => {
    const [y, x] = line.split(',').map(Number);
    return { x: x!, y: y! };
  });
}

interface Certified {
  readonly parameters: readonly number[];
  readonly parameter_sd: readonly number[];
  readonly residual_ss: number;
  readonly residual_sd: number;
}

describe('certified nonlinear sets, each from both of its starts', () => {
  const nonlinear = /^nist-strd-(misra1a|danwood|rat42|rat43|boxbod|mgh09|chwirut2)$/;
  eachRow(publishedRows('nist_strd_certified.json'), nonlinear, 7, (row) => {
    const points = observations(row.inputs.data as string);
    const curve = curves[row.inputs.model as string]!;
    const certified = row.expected as Certified;
    for (const start of ['start1', 'start2']) {
      const fit = levenbergMarquardt(
        (b) => points.map(({ x, y }) => y - curve(x, b)),
        row.inputs[start] as number[],
      )!;
      expect(fit.converged, start).toBe(true);
      // Rat43 is certified with 9 degrees of freedom, yet its deviations are those of 15 observations less 4 parameters.
      expect(fit.degreesOfFreedom).toBe(points.length - certified.parameters.length);
      const scatter = Math.sqrt(fit.residualSumOfSquares / fit.degreesOfFreedom);
      expect(off([scatter], [certified.residual_sd]), start).toBeLessThan(sumDigits);
      expect(off([fit.residualSumOfSquares], [certified.residual_ss]), start).toBeLessThan(sumDigits);
      expect(off(fit.parameters, certified.parameters), start).toBeLessThan(parameterDigits);
      expect(off(fit.standardErrors!, certified.parameter_sd), start).toBeLessThan(deviationDigits);
    }
  });
});

/** The largest relative difference. */
function off(found: readonly number[], certified: readonly number[]): number {
  expect(found).toHaveLength(certified.length);
  return Math.max(...certified.map((value, k) => Math.abs(found[k]! / value - 1)));
}

describe('what can’t be fitted', () => {
  test('fewer observations than parameters, none to fit, a start that fits nothing', () => {
    expect(levenbergMarquardt(() => [1], [1, 2])).toBeNull();
    expect(levenbergMarquardt(() => [1], [])).toBeNull();
    expect(levenbergMarquardt(() => [Number.NaN, 1], [1])).toBeNull();
  });
  test('a parameter that changes nothing has no standard error', () => {
    const fit = levenbergMarquardt(([a]) => [1, 2, 3, 4].map((y) => y - a!), [0, 5])!;
    expect(fit.parameters[0]).toBeCloseTo(2.5, 9);
    expect(fit.standardErrors).toBeNull();
  });
  test('points that lie on the curve are met exactly', () => {
    const fit = levenbergMarquardt(([a, b]) => [0, 1, 2].map((x) => 3 + 2 * x - (a! + b! * x)), [0, 0])!;
    expect(fit.converged).toBe(true);
    expect(fit.parameters[0]).toBeCloseTo(3, 9);
    expect(fit.parameters[1]).toBeCloseTo(2, 9);
  });
});
