import { ok, type Result } from '../../../foundation/result.ts';
import { type Registration, register } from '../../../imaging/matching/register.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import type { DecodedPhotographs } from '../../comparison/decodeAll.ts';
import type { MeasureInput, MeasuringHooks } from '../../comparison/measureInput.ts';
import { engineVersion } from '../../engineVersion.ts';
import { bytesKey, type KeptParts, partKey } from './keptParts.ts';
import { patchReadingVersion } from './patchReadingVersion.ts';

/** A patch is read over millimetres: a stretch found so coarsely is right to some hundredths of one. */
const sparing = { finestPxPerMm: 4, spacingMm: 13 } as const;

/**
 * Lays a print onto the test stone; where the same two photographs with the same corners were laid before, that is taken:
 * patches that were moved change nothing about it.
 * @param stoneCorners given or found; null: none could be found.
 */
export async function placePrint(
  { stone, proof, sizeMm, cornersInOrder = false }: MeasureInput,
  photos: DecodedPhotographs,
  stoneCorners: Corners | null,
  parts: KeptParts,
  hooks: Pick<MeasuringHooks, 'stopped'> & { readonly progress: (share: number) => void },
): Promise<Result<Registration>> {
  const key = partKey(
    'place',
    engineVersion,
    patchReadingVersion,
    [bytesKey(stone.bytes), stoneCorners],
    [bytesKey(proof.bytes), proof.corners, cornersInOrder],
    sizeMm,
  );
  const known = await parts.known<Registration>(key);
  if (known !== null) return ok(known);
  const placed = register({
    stone: photos.stone,
    proof: photos.proof,
    sizeMm,
    stoneCorners,
    proofCorners: proof.corners,
    proofCornersInOrder: cornersInOrder,
    sparing,
    onProgress: hooks.progress,
    stopped: hooks.stopped,
  });
  if (placed.ok) await parts.keep(key, placed.value);
  return placed;
}
