import type { FeatureName, FeatureReading, Features } from '../../../records/suspects.ts';
import { normalUpperTail } from '../../../science/statistics/normalTail.ts';
import { featureTable } from './featureTable.ts';

/** How surely a feature is there, 0..1: the chance that its true value passes its limit, the limit itself being soft. */
export function featurePresence(name: FeatureName, { value, deviation }: FeatureReading): number {
  const { from, soft } = featureTable[name];
  return 1 - normalUpperTail((value - from) / Math.hypot(deviation, soft));
}

/** Presence of every feature that was read. */
export function presences(features: Features): ReadonlyMap<FeatureName, number> {
  return new Map(
    Object.entries(features).flatMap(([name, reading]) =>
      reading ? [[name as FeatureName, featurePresence(name as FeatureName, reading)] as const] : [],
    ),
  );
}
