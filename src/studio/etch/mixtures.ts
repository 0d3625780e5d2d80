import type { EtchPart, EtchPlan } from '../../records/etch.ts';
import { totalAmounts } from './amounts.ts';
import { laidRows } from './laidRows.ts';

/** One etch as it is mixed for all the places that take it. */
export interface PlannedMixture {
  readonly name: string;
  readonly ml: number;
  readonly parts: readonly EtchPart[];
  /** Letters of the places that take it, in the plan's order. */
  readonly letters: readonly string[];
}

/** What to mix before laying: places whose etches have one name and one make-up share a mixture. */
export function plannedMixtures(plan: EtchPlan): PlannedMixture[] {
  const groups = new Map<string, ReturnType<typeof laidRows>>();
  for (const line of laidRows(plan)) {
    const { etch } = line.row;
    if (!etch) continue;
    const key = JSON.stringify([etch.name, ...etch.parts.map((part) => part.material)]);
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()].map((lines) => ({
    name: lines[0]!.row.etch!.name,
    ml: Math.round(1000 * lines.reduce((sum, { row }) => sum + row.etch!.ml, 0)) / 1000,
    parts: totalAmounts(lines.map(({ row }) => row.etch!.parts)),
    letters: lines.map(({ row }) => row.letter),
  }));
}
