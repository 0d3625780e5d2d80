import type { Registered, Registration } from '../../imaging/matching/register.ts';
import type { ToneResult } from '../../imaging/tone/measureTone.ts';
import type { ComparisonParameters, ComparisonRecord, ComparisonWarning } from '../../records/comparison.ts';
import { comparisonSchema, defaultParameters } from '../../records/comparison.ts';
import { engineVersion } from '../engineVersion.ts';
import type { MeasureInput } from './measureInput.ts';

/** The usual thresholds, with those that were given in their place. */
export function parametersOf(input: MeasureInput): ComparisonParameters {
  return { ...defaultParameters, ...input.parameters, sizeMm: input.sizeMm };
}

/** A refused pair: why, and nothing measured. */
export function refusedRecord(
  input: MeasureInput,
  refused: Exclude<Registration, { readonly verdict: 'ok' }>,
): ComparisonRecord {
  return {
    schema: comparisonSchema,
    engine: engineVersion,
    parameters: parametersOf(input),
    verdict: refused.verdict,
    reason: refused.reason,
    warnings: [],
    registration: null,
    ground: null,
    response: null,
    solid: { stone: null, proof: null },
    strength: { stone: null, proof: null },
    zones: [],
    toneCurves: [],
    areas: { lostFraction: null, filledFraction: null, scumFraction: null, covered: null },
    maps: null,
  };
}

/** A measured pair. */
export function measuredRecord(
  input: MeasureInput,
  registered: Registered,
  tone: Omit<ToneResult, 'drawn' | 'printed' | 'rasters'>,
): ComparisonRecord {
  return {
    schema: comparisonSchema,
    engine: engineVersion,
    parameters: parametersOf(input),
    verdict: 'ok',
    reason: null,
    warnings: [...cornerWarnings(registered), ...tone.warnings],
    registration: {
      kind: registered.kind,
      turn: registered.turn,
      mirrored: registered.mirrored,
      residualMm: registered.residualMm,
      samples: registered.samples,
    },
    ground: tone.ground,
    response: tone.response,
    solid: tone.solid,
    strength: tone.strength,
    zones: tone.zones,
    toneCurves: tone.toneCurves,
    areas: tone.areas,
    maps: tone.maps && { lost: 'lost.png', filled: 'filled.png', scum: 'scum.png', pxPerMm: tone.mapPxPerMm },
  };
}

/** Corners that nobody set are said, since the whole frame of millimetres rests on those of the stone. */
function cornerWarnings({ cornersFound }: Registered): ComparisonWarning[] {
  if (!cornersFound.stone) return [];
  const message =
    'The corners on the stone were found by the tool, not set: check on the pictures that the work rectangle is right, and set them by hand where it is not.';
  return [{ code: 'corners-found', message }];
}
