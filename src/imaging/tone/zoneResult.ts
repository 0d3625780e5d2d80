import type { ComparisonParameters, ZoneResult } from '../../records/comparison.ts';
import type { Zone } from '../../records/zone.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { coverageFactor, zoneChange } from './zoneChange.ts';
import { totalDeviation, type ZoneReading } from './zoneCoverage.ts';

/** A zone as the record has it, from its readings on stone and print; null where one could not be read. */
export function zoneResult(
  zone: Zone,
  drawn: ZoneReading | null,
  printed: ZoneReading | null,
  parameters: ComparisonParameters,
): ZoneResult {
  const common = { id: zone.id, name: zone.name, medium: zone.medium };
  const change =
    drawn && printed
      ? zoneChange(
          { value: drawn.coverage, deviation: totalDeviation(drawn.parts) },
          { value: printed.coverage, deviation: totalDeviation(printed.parts) },
          parameters,
        )
      : 'undecided';
  return {
    ...common,
    drawn: drawn && interval(drawn),
    printed: printed && interval(printed),
    drawnDarkness: drawn?.darkness ?? null,
    printedDarkness: printed?.darkness ?? null,
    change,
    covered: printed?.covered ?? 0,
    areaMm2: Math.abs(signedArea(zone.polygonMm)),
  };
}

function interval(reading: ZoneReading) {
  const coverage = Math.min(1, Math.max(0, reading.coverage));
  const half = coverageFactor * totalDeviation(reading.parts);
  return {
    coverage,
    low: Math.min(1, Math.max(0, reading.coverage - half)),
    high: Math.min(1, Math.max(0, reading.coverage + half)),
    parts: reading.parts,
  };
}
