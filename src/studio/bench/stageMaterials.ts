import type { BatchKind } from '../../records/batch.ts';
import type { EtchPlan } from '../../records/etch.ts';
import type { LineStage, PouredUnit } from '../../records/run.ts';

/** A material that a stage uses, as it is offered to be logged. */
export interface StageMaterial {
  readonly material: string;
  readonly unit: PouredUnit;
  /** What the plan measures out for it, ml; null where no plan says. */
  readonly plannedMl: number | null;
  /** The kind of its batches; null: none are kept of it. */
  readonly batch: BatchKind | null;
}

/** What stages use, beside what a plan of the first etch says: common practice, no source. */
const usedAt: Readonly<Partial<Record<LineStage, readonly string[]>>> = {
  'gum-border': ['gum'],
  powder: ['rosin', 'talc'],
  'first-etch': ['gum', 'tannic solution'],
  washout: ['washout solvent'],
  base: ['base'],
  'second-powder': ['rosin', 'talc'],
  'second-etch': ['gum', 'tannic solution'],
  'second-etch-quick': ['gum', 'tannic solution'],
  'second-washout': ['washout solvent'],
  'second-base': ['base'],
  'close-down': ['gum'],
  'spot-etch': ['gum', 'tannic solution'],
  'counter-etch': ['counter-etch solution'],
};

const weighed: ReadonlySet<string> = new Set(['rosin', 'talc']);
const batches: Readonly<Record<string, BatchKind>> = {
  gum: 'gum',
  'tannic solution': 'tannic',
  'washout solvent': 'washout',
  base: 'base',
};

/** The stages that use anything that is poured or dusted on, in the line's order. */
export const pouringStages = Object.keys(usedAt) as readonly LineStage[];

/** What a stage uses; the first etch by its plan, where there is one. */
export function stageMaterials(stage: LineStage, plan: EtchPlan | null): readonly StageMaterial[] {
  if (stage === 'first-etch' && plan !== null)
    return plan.batches.map(({ material, ml }) => ({ ...offered(material), plannedMl: ml }));
  return (usedAt[stage] ?? []).map(offered);
}

function offered(material: string): StageMaterial {
  return {
    material,
    unit: weighed.has(material) ? 'g' : 'ml',
    plannedMl: null,
    batch: batches[material] ?? null,
  };
}
