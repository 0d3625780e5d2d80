import type { Registered } from '../../../imaging/matching/register.ts';
import { solidRecord, strengthOf } from '../../../imaging/tone/measureTone.ts';
import { blurWarning } from '../../../imaging/tone/pictureQuality.ts';
import { coveredShare, sheetWarnings } from '../../../imaging/tone/sheetWarnings.ts';
import { zoneResult } from '../../../imaging/tone/zoneResult.ts';
import type { ComparisonRecord, ComparisonWarning } from '../../../records/comparison.ts';
import { measuredRecord, parametersOf } from '../../comparison/comparisonRecord.ts';
import type { MeasureInput } from '../../comparison/measureInput.ts';
import type { PatchTones } from './readPatchSide.ts';

/** What was read of the patches, as the record of a comparison has it; maps, curves and areas of change are null. */
export function patchRecord(
  input: MeasureInput,
  registered: Registered,
  stone: PatchTones | null,
  print: PatchTones | null,
): ComparisonRecord {
  const { covered, partial } = registered;
  const parameters = parametersOf(input);
  return measuredRecord(input, registered, {
    warnings: [
      ...warningsOf('stone', stone, print),
      ...warningsOf('proof', print, stone),
      ...sheetWarnings(covered, partial, print?.ground ?? null),
    ],
    ground: stone && print ? { stone: stone.ground, proof: print.ground } : null,
    response: stone && print ? { stone: stone.response, proof: print.response } : null,
    solid: { stone: solidRecord(stone?.solid ?? null), proof: solidRecord(print?.solid ?? null) },
    strength: { stone: strengthOf(stone?.solid ?? null), proof: strengthOf(print?.solid ?? null) },
    zones: input.zones.map((zone, index) =>
      zoneResult(zone, stone?.readings[index] ?? null, print?.readings[index] ?? null, parameters),
    ),
    toneCurves: [],
    areas: {
      lostFraction: null,
      filledFraction: null,
      scumFraction: null,
      covered: coveredShare(covered),
    },
    maps: null,
    mapPxPerMm: 0,
  });
}

/** Beside the other object a photograph can turn out to be blurred that by itself did not. */
function warningsOf(
  side: 'stone' | 'proof',
  own: PatchTones | null,
  other: PatchTones | null,
): readonly ComparisonWarning[] {
  if (!own) return [];
  const known = own.warnings.some(({ code }) => code === 'blurred');
  return known ? own.warnings : [...own.warnings, ...blurWarning(side, own, other)];
}
