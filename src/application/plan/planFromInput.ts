import type { Failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EtchPlan, EtchTable, PlanRequest } from '../../records/etch.ts';
import { acidInGumTable } from '../../studio/etch/acidInGumTable.ts';
import { etchPlan } from '../../studio/etch/etchPlan.ts';
import { tannicTable } from '../../studio/etch/tannicTable.ts';
import { judgeTableRows } from '../etchTables/judgeTableRows.ts';
import { judgeStone } from '../stones/judgeStone.ts';
import { judgeStoneZones } from '../works/judgeStoneZones.ts';

/** The tables that every studio starts with. */
export const startingTables: readonly EtchTable[] = [tannicTable, acidInGumTable];

/**
 * Checks what a schema can't (places, outlines, ids) and plans the etch.
 * @param request well-formed by `contract`, with its table resolved.
 * @returns the plan, feasible or not; a failure with the path to the field for what can't be planned.
 */
export function planFromInput(request: PlanRequest): Result<EtchPlan> {
  const wrong = judgePlanRequest(request);
  return wrong ? fail(wrong) : ok(etchPlan(request));
}

/** Judges what a schema can't of a request: size, table, zones. Null when it can be planned. */
export function judgePlanRequest({ stone, zones, table }: PlanRequest): Failure | null {
  return (
    judgeStone({ ...stone, thicknessesMm: [stone.thicknessMm] }) ??
    judgeTableRows(table.rows, 'table.rows') ??
    judgeStoneZones(zones, stone)
  );
}
