import type { FeatureReading } from '../../records/suspects.ts';
import { quantile } from '../../science/statistics/quantile.ts';
import type { EvidenceGrid } from './evidenceGrid.ts';
import { standardError } from './means.ts';
import { reading } from './reading.ts';

const fewestCells = 25;

/**
 * What became of the ends of the tone scale, wherever they lie: `lightsLow`: the share of itself that even the better kept
 * quarter of the light work lost; `darksClosed`: the share of their whites that darks lost; `middlesGain`: what middles gained in coverage.
 */
export function toneEnds(grid: EvidenceGrid): {
  lightsLow: FeatureReading | null;
  darksClosed: FeatureReading | null;
  middlesGain: FeatureReading | null;
} {
  const over = (from: number, to: number, of: (drawn: number, printed: number) => number): number[] => {
    const values: number[] = [];
    for (let cell = 0; cell < grid.drawn.length; cell++) {
      const drawn = grid.drawn[cell]!;
      if (grid.outline[cell] || !(drawn >= from && drawn <= to) || Number.isNaN(grid.printed[cell]!))
        continue;
      values.push(of(drawn, grid.printed[cell]!));
    }
    return values;
  };
  const lights = over(0.06, 0.24, (drawn, printed) => 1 - printed / drawn);
  const middles = over(0.27, 0.48, (drawn, printed) => printed - drawn);
  const darks = over(0.56, 0.86, (drawn, printed) => (printed - drawn) / (1 - drawn));
  const told = (values: readonly number[], share: number, floor: number) =>
    values.length < fewestCells
      ? null
      : reading(quantile(values, share), Math.hypot(standardError(values), floor));
  return {
    lightsLow: told(lights, 0.25, 0.05),
    darksClosed: told(darks, 0.5, 0.03),
    middlesGain: told(middles, 0.5, 0.01),
  };
}
