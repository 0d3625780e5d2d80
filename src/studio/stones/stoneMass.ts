import type { Measured } from '../../foundation/measured.ts';
import type { Stone } from '../../records/stone.ts';

/** g/cm³: the trade's range and the dry bulk density near 2.61 (see docs; stone density is common practice, no source). */
const tradeDensity = { low: 2.5, value: 2.61, high: 2.7 };

/**
 * Mass of a stone from its size, mean thickness and density.
 * @returns kg with the range of the density and of the thickness between corners; null without any thickness.
 */
export function stoneMassKg(
  stone: Pick<Stone, 'widthMm' | 'heightMm' | 'cornerThicknessMm' | 'densityGPerCm3'>,
): Measured | null {
  const known = stone.cornerThicknessMm.filter((thickness) => thickness !== null);
  if (known.length === 0) return null;
  const meanMm = known.reduce((sum, thickness) => sum + thickness, 0) / known.length;
  const kg = (thicknessMm: number, density: number) =>
    (stone.widthMm * stone.heightMm * thicknessMm * density) / 1e6;
  const typed = stone.densityGPerCm3;
  const density = typed === null ? tradeDensity : { low: typed, value: typed, high: typed };
  const [thinnest, thickest] = known.length < 4 ? [Math.min(...known), Math.max(...known)] : [meanMm, meanMm];
  return {
    value: kg(meanMm, density.value),
    low: kg(thinnest, density.low),
    high: kg(thickest, density.high),
    basis: typed === null ? 'common practice' : 'typed',
    warnings:
      known.length < 4 ? ['Not all four corners are measured: the mass may lie outside this range.'] : [],
  };
}
