import type { ComparisonRecord, WarningCode } from '../../records/comparison.ts';
import type { FeatureReading } from '../../records/suspects.ts';
import { reading } from './reading.ts';

const doubtful: readonly WarningCode[] = ['overexposed', 'blurred', 'glare', 'cast', 'chips-misfit'];

/** How many things are wrong with the photographs themselves. */
export function pictureDoubt({ warnings }: Pick<ComparisonRecord, 'warnings'>): FeatureReading | null {
  const found = warnings.filter(({ code }) => doubtful.includes(code)).map(({ code }) => code);
  return reading(found.length, 0.1, found.length > 0 ? [...new Set(found)].join(', ') : null);
}
