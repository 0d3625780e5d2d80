import { mapCaseFeatures } from './mapCase.ts';
import { plantedCase, type SimulationSettings } from './plantedCase.ts';
import { featuresFromMaps, renderedMaps } from './renderedCase.ts';
import type { ScoredCase } from './score.ts';

/** How a case is read: from coverage maps, or by the whole engine from rendered photographs. */
export type CaseSource = 'maps' | 'photographs';

/** A case that was read; null features where the engine refused a pair. */
export type ReadCase = Omit<ScoredCase, 'features'> & {
  readonly index: number;
  readonly features: ScoredCase['features'] | null;
};

/** Plants the case of an index and reads it. */
export async function readCase(
  settings: SimulationSettings,
  source: CaseSource,
  index: number,
): Promise<ReadCase> {
  const planted = plantedCase(settings, index);
  const { seed, causes, unknown } = planted;
  if (source === 'maps') return { index, seed, causes, unknown, features: mapCaseFeatures(planted) };
  const maps = await renderedMaps(planted);
  return { index, seed, causes, unknown, features: maps && featuresFromMaps(planted, maps) };
}
