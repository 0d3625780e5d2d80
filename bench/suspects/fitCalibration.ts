import { holds, judgeCase, type ScoredCase } from './score.ts';

/** Scale and shift of a logistic curve. */
export interface Calibration {
  readonly scale: number;
  readonly shift: number;
}

/**
 * The logistic curve that best turns log odds into how often a suspect was the one (Platt 1999, from memory), for causes and for
 * "something else", by Newton's steps on the likelihood.
 */
export function fitCalibration(cases: readonly ScoredCase[]): { causes: Calibration; else: Calibration } {
  const points = cases.flatMap((one) =>
    [...judgeCase(one).chances].map(([suspect, { logOdds }]) => ({
      suspect,
      x: logOdds,
      y: holds(one, suspect) ? 1 : 0,
    })),
  );
  return {
    causes: fitted(points.filter(({ suspect }) => suspect !== 'something-else')),
    else: fitted(points.filter(({ suspect }) => suspect === 'something-else')),
  };
}

function fitted(points: readonly { readonly x: number; readonly y: number }[]): Calibration {
  let [scale, shift] = [0.5, -1];
  for (let round = 0; round < 60; round++) {
    let [g0, g1, h00, h01, h11] = [0, 0, 1e-6, 0, 1e-6];
    for (const { x, y } of points) {
      const p = 1 / (1 + Math.exp(-(scale * x + shift)));
      const w = Math.max(1e-9, p * (1 - p));
      g0 += y - p;
      g1 += (y - p) * x;
      h00 += w;
      h01 += w * x;
      h11 += w * x * x;
    }
    const determinant = h00 * h11 - h01 * h01;
    const step = 0.7;
    shift += (step * (h11 * g0 - h01 * g1)) / determinant;
    scale += (step * (h00 * g1 - h01 * g0)) / determinant;
  }
  return { scale: Math.round(scale * 1000) / 1000, shift: Math.round(shift * 1000) / 1000 };
}
