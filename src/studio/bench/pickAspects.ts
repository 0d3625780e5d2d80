import type { BatchEntry } from '../../records/batch.ts';
import type { RunState } from '../../records/bench.ts';
import type { RunTool } from '../../records/run.ts';
import type { Aspect } from './aspectChanges.ts';

const tools: readonly Exclude<RunTool, 'batch'>[] = ['ink', 'roller', 'press', 'paper', 'cloth'];
const kinds: readonly BatchEntry['kind'][] = ['tannic', 'gum', 'washout', 'base'];
const kindWords = { tannic: 'tannic solution', gum: 'gum', washout: 'washout', base: 'base' } as const;

/** What a picked ink is made of; null where that is not noted. */
export interface PickedInk {
  readonly softParts: number | null;
  readonly stiffParts: number | null;
  readonly modifierPercent: number | null;
}

/**
 * What may differ in what was picked: ink, roller, press, paper, cloth, and the batches with their age at that time.
 * @param batches those that the run or its plan names, as old as they were at that time
 * @param ink what the ink that was picked is made of; null where it was told in words alone
 */
export function pickAspects(
  { picked }: Pick<RunState, 'picked'>,
  batches: readonly BatchEntry[],
  ink: PickedInk | null = null,
): readonly Aspect[] {
  const unlogged = picked.filter(({ tool, id }) => tool === 'batch' && !batches.some((one) => one.id === id));
  return [
    ...tools.map((tool, index) => ({
      aspect: `tool ${tool}`,
      name: tool,
      value: picked.findLast((one) => one.tool === tool)?.words ?? null,
      rank: 4 + index / 10,
      caution: 'not picked in the log',
    })),
    ...(ink === null ? [] : inkAspects(ink)),
    ...kinds.flatMap((kind) => batchAspects(kind, batches.findLast((one) => one.kind === kind) ?? null)),
    ...unlogged.map(({ words }, index) => ({
      aspect: `batch ${index + 1}`,
      name: 'another batch',
      value: words,
      rank: 4.5,
    })),
  ];
}

function inkAspects({ softParts, stiffParts, modifierPercent }: PickedInk): readonly Aspect[] {
  const whole = softParts === null || stiffParts === null ? 0 : softParts + stiffParts;
  const soft = whole === 0 ? null : `${((100 * softParts!) / whole).toFixed(0)} % soft`;
  const caution = 'not noted with the ink';
  return [
    { aspect: 'soft part of the ink', name: 'soft part of the ink', value: soft, rank: 4.05, caution },
    {
      aspect: 'modifier in the ink',
      name: 'modifier in the ink',
      value: modifierPercent === null ? null : `${modifierPercent} % on the ink`,
      rank: 4.06,
      caution,
    },
  ];
}

function batchAspects(kind: BatchEntry['kind'], batch: BatchEntry | null): readonly Aspect[] {
  const about = (aspect: string, rank: number, value: string | null): Aspect => ({
    aspect: `${aspect} of the ${kindWords[kind]} batch`,
    name: `${aspect} of the ${kindWords[kind]} batch`,
    value,
    rank,
    caution: batch === null ? 'not picked in the log' : 'not noted with the batch',
  });
  const number = (value: number | null, unit: string) => (value === null ? null : `${value} ${unit}`.trim());
  const age = batch?.ageDays ?? null;
  const lines = [
    about('name', 6, batch?.name ?? null),
    about('age', 3, age === null || age < 0 ? null : age === 1 ? '1 day' : `${age} days`),
  ];
  if (batch?.kind === 'gum') {
    lines.push(about('pH', 3, number(batch.pH, '')), about('smell', 3, batch.smell));
    lines.push(about('strength', 4, number(batch.baume, '°Bé')));
  }
  if (batch?.kind === 'washout' || batch?.kind === 'base') {
    lines.push(about('make', 4, batch.product || null), about('lot', 5, batch.lot || null));
  }
  return lines;
}
