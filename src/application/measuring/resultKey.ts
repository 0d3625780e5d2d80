import { createHash } from 'node:crypto';
import { defaultParameters } from '../../records/comparison.ts';
import type { ComparisonRequest, ComparisonSide } from '../../records/comparisonEntry.ts';
import { patchReadingVersion } from '../testStones/reading/patchReadingVersion.ts';

/**
 * Names a result by all that it depends on: the photographs' hashes, the parameters and the engine's version.
 * Two requests that differ only in their title share a key.
 *
 * @returns SHA-256, hexadecimal
 */
export function resultKey(request: ComparisonRequest, engineVersion: string): string {
  const side = ({ photograph, corners, repeat, flat }: ComparisonSide) => [photograph, corners, repeat, flat];
  const zones = request.zones.map(({ id, name, medium, deposit, intention, polygonMm }) => [
    id,
    name,
    medium,
    deposit ?? null,
    intention ?? null,
    polygonMm,
  ]);
  const chips = request.chips.map(({ photo, name, polygonPx, reflectance }) => [
    photo,
    name,
    polygonPx,
    reflectance,
  ]);
  const all = [
    engineVersion,
    defaultParameters,
    request.sizeMm,
    side(request.stone),
    side(request.proof),
    zones,
    chips,
    // as before where it isn't asked, so that what was measured keeps its name
    ...(request.cornersInOrder ? ['corners in order'] : []),
    ...(request.only === 'patches' ? ['patches', patchReadingVersion] : []),
  ];
  return createHash('sha256').update(JSON.stringify(all)).digest('hex');
}
