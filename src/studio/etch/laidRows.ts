import { upperFirst } from '../../foundation/upperFirst.ts';
import type { EtchPlan, PlannedPart, PlannedZone } from '../../records/etch.ts';
import { nothingLaid } from './plannedZone.ts';

/** What is laid as one: a zone, or one part of a split wash. */
export interface LaidRow {
  readonly row: PlannedZone | PlannedPart;
  /** Begins with a capital; a part says its strength. */
  readonly name: string;
}

/** The rows of a plan as they are laid, in the plan's order. */
export function laidRows(plan: EtchPlan): LaidRow[] {
  return plan.zones.flatMap((zone): LaidRow[] => {
    const name = upperFirst(zone.name);
    return zone.parts.length > 0
      ? zone.parts.map((part) => ({ row: part, name: `${name}, ${part.strength}` }))
      : [{ row: zone, name }];
  });
}

/** The zones that a plan has no rule for: nobody is led to lay them, so that it must be said. */
export function unruledZones(plan: EtchPlan): readonly PlannedZone[] {
  return plan.zones.filter(({ etch, basis }) => etch === null && basis !== nothingLaid);
}
