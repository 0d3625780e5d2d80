import type { ComparisonRecord } from '../../records/comparison.ts';
import type { Features } from '../../records/suspects.ts';
import { zoneBlank } from './blankZones.ts';
import { pictureDoubt } from './pictureDoubt.ts';
import { strengths, usualStrength } from './strengths.ts';

/** The few features that a record holds by itself, without its maps. */
export function recordFeatures(record: ComparisonRecord): Features {
  return {
    ...strengths(record, usualStrength),
    zoneBlank: zoneBlank(record.zones, []),
    photographDoubt: pictureDoubt(record),
  };
}
