import type { MixtureFigure } from '../../records/mixture.ts';

/** A figure of an answer, in its unit. @param plusMinus what it may be off by, in that unit; left out: not known. */
export function figure(name: string, value: number, unit: string, plusMinus?: number): MixtureFigure {
  return {
    name,
    value,
    unit,
    low: plusMinus === undefined ? null : value - plusMinus,
    high: plusMinus === undefined ? null : value + plusMinus,
  };
}
