import { type Failure, failure } from '../foundation/failure.ts';
import type { ComparisonRequest, ComparisonSide } from '../records/comparisonEntry.ts';
import type { Store } from '../store/openStore.ts';
import type { StoredPhotograph } from '../store/repositories/photographRepository.ts';
import { validateChips } from './comparison/validateChips.ts';
import { validateCorners } from './comparison/validateCorners.ts';
import { validateProportions, validateSize } from './comparison/validateSize.ts';
import { validateZones } from './comparison/validateZones.ts';

/**
 * Judges a request before anything is kept or measured, with the same preconditions as measuring itself, so that
 * the person hears of a mistake while the form is still open. Null when usable, else the first fault with its path.
 */
export async function validateRequest(
  store: Pick<Store, 'photographs'>,
  request: ComparisonRequest,
): Promise<Failure | null> {
  const { sizeMm, zones, stone, proof } = request;
  const fault =
    validateSize(sizeMm) ??
    (await validateSide(store, request, 'stone')) ??
    (await validateSide(store, request, 'proof')) ??
    (stone.corners === null ? null : validateProportions(sizeMm, stone.corners)) ??
    validateZones(zones, sizeMm);
  if (fault) return fault;
  return stone.photograph === proof.photograph ? failure('photographs-same', {}, 'proof.photograph') : null;
}

async function validateSide(
  store: Pick<Store, 'photographs'>,
  request: ComparisonRequest,
  use: 'stone' | 'proof',
): Promise<Failure | null> {
  const side: ComparisonSide = request[use];
  const photograph = await store.photographs.find(side.photograph);
  if (photograph === null) return unknownPhotograph(use, 'photograph');
  for (const field of ['repeat', 'flat'] as const) {
    const id = side[field];
    if (id !== null && (await store.photographs.find(id)) === null) return unknownPhotograph(use, field);
  }
  return judgePlaces(request, use, photograph);
}

function judgePlaces(
  request: ComparisonRequest,
  use: 'stone' | 'proof',
  { widthPx, heightPx }: StoredPhotograph,
): Failure | null {
  const { corners } = request[use];
  const fault = corners === null ? null : validateCorners(corners, use, widthPx, heightPx);
  return fault ?? validateChips(request.chips, use, widthPx, heightPx);
}

function unknownPhotograph(use: 'stone' | 'proof', field: 'photograph' | 'repeat' | 'flat'): Failure {
  return failure('photograph-unknown', { use }, `${use}.${field}`);
}
