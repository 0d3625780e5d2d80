import type { ZoneResult } from '../../records/comparison.ts';
import type { FeatureReading } from '../../records/suspects.ts';
import type { Zone } from '../../records/zone.ts';
import { reading } from './reading.ts';

const drawnAtLeast = 0.1;
/** A stop-out prints where it is surely greyer than other bare stone by so much. */
const leastPrinted = 0.1;
/** A zone is blank where it prints less than this share of itself, and another more than that. */
const blankShare = 0.15;
const heldShare = 0.55;
/** Light work goes first: a zone is blank where one as light, or up to this darker, held. */
const darkerBy = 0.05;

/** Zones that are gone whole although others of their tone held: nothing of their medium took, or it was lost. */
export function blankZones(results: readonly ZoneResult[], zones: readonly Zone[]): ZoneResult[] {
  const drawn = results.filter(
    ({ id }) => (zones.find((zone) => zone.id === id)?.intention ?? 'drawn') === 'drawn',
  );
  const share = (zone: ZoneResult) => zone.printed!.coverage / zone.drawn!.coverage;
  const read = drawn.filter((zone) => zone.drawn && zone.printed && zone.drawn.coverage >= drawnAtLeast);
  return read.filter(
    (zone) =>
      share(zone) < blankShare &&
      read.some(
        (other) => share(other) > heldShare && other.drawn!.coverage < zone.drawn!.coverage + darkerBy,
      ),
  );
}

/** How many zones are blank, and which. null without zones. */
export function zoneBlank(results: readonly ZoneResult[], zones: readonly Zone[]): FeatureReading | null {
  if (results.length === 0) return null;
  const blank = blankZones(results, zones);
  return reading(blank.length, 0.25, blank.length > 0 ? blank.map(({ name }) => name).join(', ') : null);
}

/**
 * How many stop-outs and scraped whites print. null where there are none.
 * @param bareGrey coverage of other bare stone on the print, 0 where it is not known.
 */
export function stopOutPrints(
  results: readonly ZoneResult[],
  zones: readonly Zone[],
  bareGrey: number,
): FeatureReading | null {
  const kept = zones.filter(({ intention }) => intention === 'stop-out' || intention === 'scraped-white');
  const read = results.filter(({ id, printed }) => printed && kept.some((zone) => zone.id === id));
  if (read.length === 0) return null;
  const printing = read.filter(({ printed }) => printed!.low > leastPrinted + bareGrey);
  return reading(
    printing.length,
    0.25,
    printing.length > 0 ? printing.map(({ name }) => name).join(', ') : null,
  );
}
