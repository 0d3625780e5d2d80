import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EtchPlan, EtchTable, PlanRequest } from '../../records/etch.ts';
import { crossesItself, signedArea } from '../../science/geometry/polygon.ts';
import { acidInGumTable } from '../../studio/etch/acidInGumTable.ts';
import { etchPlan, groundId } from '../../studio/etch/etchPlan.ts';
import { tannicTable } from '../../studio/etch/tannicTable.ts';

/** The tables that every studio starts with. */
export const startingTables: readonly EtchTable[] = [tannicTable, acidInGumTable];

/** Stones larger than this are not lifted onto any press bed: 3 m, our rule. */
const largestStoneMm = 3000;
/** A point may lie this far over the edge: what a click or a rounding brings. Our rule. */
const edgeToleranceMm = 0.5;

/**
 * Checks what a schema can't (places, outlines, ids) and plans the etch.
 * @param request well-formed by `contract`, with its table resolved.
 * @returns the plan, feasible or not; a failure with the path to the field for what can't be planned.
 */
export function planFromInput(request: PlanRequest): Result<EtchPlan> {
  const wrong = stoneFailure(request) ?? tableFailure(request.table) ?? zoneFailure(request);
  return wrong ? fail(wrong) : ok(etchPlan(request));
}

function stoneFailure({ stone }: PlanRequest): Failure | null {
  const { widthMm, heightMm, thicknessMm } = stone;
  const size = { width: widthMm, height: heightMm, thickness: thicknessMm };
  const tooLarge = Math.max(widthMm, heightMm) > largestStoneMm || thicknessMm > 500;
  if (tooLarge) return failure('stone-impossible', { ...size, why: 'it is too large' }, 'stone');
  const tooSmall = Math.min(widthMm, heightMm) < 20 || thicknessMm < 5;
  if (tooSmall) return failure('stone-impossible', { ...size, why: 'it is too small' }, 'stone');
  return null;
}

function tableFailure(table: EtchTable): Failure | null {
  const hasGround = table.rows.some((row) => row.strength === 'ground');
  if (hasGround) return null;
  return failure(
    'table-malformed',
    { why: 'it has no row for the ground, which is always etched', field: 'rows' },
    'table.rows',
  );
}

function zoneFailure({ zones, stone }: PlanRequest): Failure | null {
  const ids = new Set<string>();
  for (const [index, zone] of zones.entries()) {
    const path = `zones[${index}]`;
    if (zone.id === groundId) return failure('zone-id-reserved', {}, `${path}.id`);
    if (ids.has(zone.id)) return failure('zone-duplicate', { id: zone.id }, `${path}.id`);
    ids.add(zone.id);
    const off = zone.polygonMm.findIndex(
      ([x, y]) =>
        x < -edgeToleranceMm ||
        y < -edgeToleranceMm ||
        x > stone.widthMm + edgeToleranceMm ||
        y > stone.heightMm + edgeToleranceMm,
    );
    if (off >= 0) {
      const size = { width: stone.widthMm, height: stone.heightMm };
      return failure('zone-off-stone', { id: zone.id, ...size }, `${path}.polygonMm[${off}]`);
    }
    if (crossesItself(zone.polygonMm))
      return failure('zone-self-crossing', { id: zone.id }, `${path}.polygonMm`);
    if (Math.abs(signedArea(zone.polygonMm)) < 1) {
      return failure('zone-degenerate', { id: zone.id }, `${path}.polygonMm`);
    }
  }
  return null;
}
