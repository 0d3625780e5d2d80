import type { Measured } from '../../foundation/measured.ts';
import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { PullZone } from '../../records/pullTones.ts';
import type { Zone } from '../../records/zone.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import type { Raster } from '../raster.ts';
import type { SideTone } from './readSide.ts';
import { coverageFactor } from './zoneChange.ts';
import { totalDeviation, zoneReading } from './zoneCoverage.ts';

/** The places that stand for each tone, mm from the top left of the work rectangle. */
export type ToneZones = Readonly<Record<SeriesTone, readonly Zone[]>>;

/** Darkness as it is, not over any film. */
const itself = { darkness: 1, error: 0 };

/** A measured number with its 95 % interval. */
export function measured(value: number, deviation: number): Measured {
  const half = coverageFactor * deviation;
  return { value, low: value - half, high: value + half, basis: 'measured', warnings: [] };
}

/** Darkness of each zone on one object. */
export function zoneDarkness(
  side: SideTone,
  zones: readonly Zone[],
  errorMm: Raster | null,
): readonly PullZone[] {
  return zones.map((zone) => {
    const { id, name, medium } = zone;
    const read = zoneReading(zone, side, itself, errorMm, null);
    if (!read) return { id, name, medium, darkness: null, covered: 0 };
    const darkness = measured(read.darkness, totalDeviation(read.parts));
    return { id, name, medium, darkness, covered: read.covered };
  });
}

/** Darkness of lights, middles and darks: the mean over their places by area. */
export function toneDarkness(
  side: SideTone,
  places: ToneZones,
  errorMm: Raster | null,
): Readonly<Record<SeriesTone, Measured | null>> {
  const [lights, middles, darks] = seriesTones.map((tone) => meanOf(side, places[tone], errorMm)) as [
    Measured | null,
    Measured | null,
    Measured | null,
  ];
  return { lights, middles, darks };
}

/** Half of a place off the sheet makes the mean one of other places: then there is none. */
const leastCovered = 0.5;

function meanOf(side: SideTone, zones: readonly Zone[], errorMm: Raster | null): Measured | null {
  const read = zones.map((zone) => ({
    areaMm2: Math.abs(signedArea(zone.polygonMm)),
    reading: zoneReading(zone, side, itself, errorMm, null),
  }));
  const total = read.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
  if (read.length === 0 || read.some(({ reading }) => !reading || reading.covered < leastCovered))
    return null;
  let value = 0;
  let own = 0;
  let shared = 0;
  for (const { areaMm2, reading } of read) {
    const weight = areaMm2 / total;
    const { noise, registration, ground, response, floor } = reading!.parts;
    value += weight * reading!.darkness;
    own += (weight * Math.hypot(noise, registration)) ** 2;
    // what light, response and set-up do is common to all places and doesn't average down
    shared += weight * Math.hypot(ground, response, floor);
  }
  return measured(value, Math.hypot(Math.sqrt(own), shared));
}
