import type { RunState } from '../../../records/bench.ts';
import type { EtchPlan } from '../../../records/etch.ts';
import type { Material } from '../../../records/material.ts';
import type { LineStage } from '../../../records/run.ts';
import { pouringStages, type StageMaterial, stageMaterials } from '../../../studio/bench/stageMaterials.ts';

/** A material that can be logged, with its entry in the hazard register where it was picked from there. */
export interface PouringChoice extends StageMaterial {
  readonly materialId: string | null;
}

/** Stages for which something can be logged: the one under way, then those done, newest first; else the first etch. */
export function stagesToPourFor(stages: RunState['stages']): readonly LineStage[] {
  const told = stages
    .filter(({ state }) => state !== 'skipped')
    .toSorted((a, b) => Number(b.state === 'open') - Number(a.state === 'open'))
    .map(({ stage }) => stage);
  const open = told.slice(0, 1);
  const done = told.slice(1).toReversed();
  const found = [...new Set([...open, ...done])].filter((stage) => pouringStages.includes(stage));
  return found.length > 0 ? found : ['first-etch'];
}

/** What a stage uses: by the plan, else what the register has for it, then what is usual and stands there under no name. */
export function pouringChoices(
  stage: LineStage,
  plan: EtchPlan | null,
  register: readonly Material[],
): readonly PouringChoice[] {
  const usual = stageMaterials(stage, plan).map((one) => ({ ...one, materialId: null }));
  if (stage === 'first-etch' && plan !== null) return usual;
  const own = register
    .filter(({ stages, putBy }) => !putBy && stages.includes(stage))
    .map(({ id, name }): PouringChoice => {
      const like = usual.find(({ material }) => named(name, material)) ?? usual[0];
      return {
        material: name,
        materialId: id,
        unit: like?.unit ?? 'ml',
        plannedMl: null,
        batch: like?.batch ?? null,
      };
    });
  return [...own, ...usual.filter(({ material }) => !own.some((one) => named(one.material, material)))];
}

/** Whether a register's own name is that of a usual material. */
function named(own: string, usual: string): boolean {
  return own.toLowerCase().includes(usual.split(' ')[0]!);
}
