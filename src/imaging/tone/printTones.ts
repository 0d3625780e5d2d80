import type { Measured } from '../../foundation/measured.ts';
import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { PullZone } from '../../records/pullTones.ts';
import type { Zone } from '../../records/zone.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import type { Raster } from '../raster.ts';
import type { SideTone } from './readSide.ts';
import { coverageFactor } from './zoneChange.ts';
import { totalDeviation, type ZoneReading, zoneReading } from './zoneCoverage.ts';

/** The places that stand for each tone, mm from the top left of the work rectangle. */
export type ToneZones = Readonly<Record<SeriesTone, readonly Zone[]>>;

/** Darkness as it is, not over any film. */
const itself = { darkness: 1, error: 0 };

/** A measured number with its 95 % interval. */
export function measured(value: number, deviation: number): Measured {
  const half = coverageFactor * deviation;
  return { value, low: value - half, high: value + half, basis: 'measured', warnings: [] };
}

/**
 * Darkness of each zone on one object, and of lights, middles and darks: the mean over their places by area. A place that is a
 * zone is read once.
 */
export function pullDarkness(
  side: SideTone,
  zones: readonly Zone[],
  places: ToneZones,
  errorMm: Raster | null,
): { readonly zones: readonly PullZone[]; readonly tones: Readonly<Record<SeriesTone, Measured | null>> } {
  const known = new Map<string, ZoneReading | null>();
  const read: ReadZone = (zone) => {
    const key = JSON.stringify([zone.medium, zone.polygonMm]);
    const reading = known.has(key) ? known.get(key)! : zoneReading(zone, side, itself, errorMm, null);
    known.set(key, reading);
    return reading;
  };
  const [lights, middles, darks] = seriesTones.map((tone) => meanOf(places[tone], read)) as [
    Measured | null,
    Measured | null,
    Measured | null,
  ];
  return { zones: zones.map((zone) => zoneDarkness(zone, read)), tones: { lights, middles, darks } };
}

type ReadZone = (zone: Zone) => ZoneReading | null;

function zoneDarkness(zone: Zone, read: ReadZone): PullZone {
  const { id, name, medium } = zone;
  const reading = read(zone);
  if (!reading) return { id, name, medium, darkness: null, covered: 0 };
  const darkness = measured(reading.darkness, totalDeviation(reading.parts));
  return { id, name, medium, darkness, covered: reading.covered };
}

/** Half of a place off the sheet makes the mean one of other places: then there is none. */
const leastCovered = 0.5;

function meanOf(zones: readonly Zone[], readZone: ReadZone): Measured | null {
  const read = zones.map((zone) => ({
    areaMm2: Math.abs(signedArea(zone.polygonMm)),
    reading: readZone(zone),
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
