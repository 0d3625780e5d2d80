import type { Poured, PouredAmount } from '../../records/bench.ts';
import type { LineStage, PouredTold } from '../../records/run.ts';
import { isoOf, type PlacedEvent } from './placedEvents.ts';
import { rememberedShare } from './spent.ts';
import type { StageTold } from './stagesDone.ts';

/** What a log tells of amounts poured or used, in order; each counts for the stage that it names, else for that under way. */
export function pouredOf(placed: readonly PlacedEvent[], stages: readonly StageTold[]): readonly Poured[] {
  return placed.flatMap(({ event, moment }): Poured[] => {
    if (event.kind !== 'poured') return [];
    const { material, how, stage, batchId, materialId, words } = event.payload;
    return [
      {
        sequence: event.sequence,
        at: isoOf(moment),
        material,
        stage: stage ?? stageAt(stages, moment.ms),
        how,
        amount: boundedAmount(event.payload),
        batchId: batchId ?? null,
        materialId: materialId ?? null,
        words: words ?? '',
      },
    ];
  });
}

/**
 * An amount with what bounds it: half a mark of the vessel where one is named, half of it where it is remembered (our
 * rule, as for times); else nothing is known of its error.
 */
export function boundedAmount({ amount, how, mark }: PouredTold): PouredAmount | null {
  if (amount === null) return null;
  const arm = how === 'remembered' ? amount.value * rememberedShare : mark == null ? null : mark / 2;
  return {
    ...amount,
    low: arm === null ? null : Math.max(0, amount.value - arm),
    high: arm === null ? null : amount.value + arm,
  };
}

/** The newest stage that had begun and not ended; null where nothing was under way. */
function stageAt(stages: readonly StageTold[], ms: number): LineStage | null {
  const under = stages.findLast(
    ({ started, ended }) => started !== null && started.ms <= ms && (ended === null || ended.ms >= ms),
  );
  return under?.stage ?? null;
}
