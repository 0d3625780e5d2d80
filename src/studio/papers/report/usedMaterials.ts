import type { PouredAmount } from '../../../records/bench.ts';
import type { KeptAt } from '../../../records/keptAt.ts';
import type { PouredUnit } from '../../../records/run.ts';
import { pouredLines } from '../../bench/pouredLines.ts';
import { materialDoubtMl } from '../../etch/areaDoubt.ts';
import { planLaidIn } from './planLaidIn.ts';
import type { ReportInput } from './reportInput.ts';

/** One amount of a material with where it is kept. */
export interface UsedAmount extends PouredAmount {
  readonly at: KeptAt;
}

/** A material over all the runs of a report. */
export interface UsedMaterial {
  readonly name: string;
  /** Its entries in the hazard register, as the log names them. */
  readonly materialIds: readonly string[];
  /** By the log. */
  readonly poured: readonly UsedAmount[];
  /** Where a plan was laid and nothing was logged of it; bounded by the ± of its areas alone. */
  readonly onlyPlanned: readonly UsedAmount[];
  /** Some was used without being measured: what is known is the least that it was. */
  readonly alsoUnmeasured: boolean;
}

/** What was used of each material: as poured by the log, and only as planned where nothing was logged. */
export function usedMaterials({ works }: Pick<ReportInput, 'works'>): readonly UsedMaterial[] {
  const used = new Map<string, { -readonly [K in keyof UsedMaterial]: UsedMaterial[K] }>();
  for (const { plan, runs } of works) {
    for (const run of runs) {
      const laid = planLaidIn(run, plan);
      for (const line of pouredLines(run.poured, laid?.plan ?? null)) {
        const key = line.material.toLowerCase();
        const before = used.get(key) ?? {
          name: line.material,
          materialIds: [],
          poured: [],
          onlyPlanned: [],
          alsoUnmeasured: false,
        };
        used.set(key, before);
        const told = line.logged.map((index) => ({ index, ...run.poured[index]! }));
        before.materialIds = [
          ...new Set([...before.materialIds, ...told.flatMap(({ materialId }) => materialId ?? [])]),
        ];
        before.alsoUnmeasured ||= line.alsoUnmeasured;
        before.poured = [
          ...before.poured,
          ...told.flatMap(({ index, amount }) =>
            amount === null
              ? []
              : [
                  {
                    ...amount,
                    at: { record: 'run', id: run.id, field: `poured.${index}.amount.value` } as const,
                  },
                ],
          ),
        ];
        if (line.logged.length > 0 || laid === null) continue;
        const need = laid.plan.batches.findIndex(({ material }) => material === line.material);
        const doubt = materialDoubtMl(laid, line.material);
        before.onlyPlanned = [
          ...before.onlyPlanned,
          {
            value: line.plannedMl!,
            unit: 'ml',
            low: doubt === null ? null : Math.max(0, line.plannedMl! - doubt),
            high: doubt === null ? null : line.plannedMl! + doubt,
            at: { record: 'plan', id: laid.id, field: `plan.batches.${need}.ml` },
          },
        ];
      }
    }
  }
  return [...used.values()];
}

/** Of all that is known of a material: what is in one unit. */
export function inUnit(all: readonly UsedAmount[], unit: PouredUnit): readonly UsedAmount[] {
  return all.filter((one) => one.unit === unit);
}
