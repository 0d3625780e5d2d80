import type { TrialColumns, TrialRow } from '../../records/trial.ts';
import { independentColumns } from '../../science/statistics/mixed/estimable.ts';
import type { Grouping } from '../../science/statistics/mixed/varianceComponents.ts';

/** What scatters in a trial, from coarse to fine. */
export interface TrialStrata {
  /** The random terms that the table can tell apart, with what each is called. */
  readonly groupings: readonly { readonly of: string; readonly grouping: Grouping }[];
  /** Those that it can't, as they coincide with a treatment or with another one. */
  readonly leftOut: readonly string[];
  /** Degrees of freedom between strips treated alike, beyond blocks and treatments; null without a whole-strip treatment. */
  readonly wholePlotDf: number | null;
  /** Degrees of freedom between patches treated alike. */
  readonly subPlotDf: number;
  /** Which strip each patch lies in; which block, where there are no strips. */
  readonly units: Grouping;
}

/**
 * The strata of a trial: blocks, the strips in them that got a whole treatment, and the patches.
 * @param design the treatments' regressors, one row a patch.
 */
export function trialStrata(
  rows: readonly TrialRow[],
  columns: TrialColumns,
  design: readonly (readonly number[])[],
): TrialStrata {
  const blocks = columns.blocks.map((of, k) => ({
    of,
    grouping: groupingOf(rows.map((row) => row.blocks[k]!)),
  }));
  const strips = groupingOf(rows.map((row) => JSON.stringify([row.blocks, row.strip, row.whole])));
  const blocked = join(design, ...blocks.map((block) => block.grouping));
  const stripped = join(blocked, strips);
  const hasStrips = columns.whole !== null || columns.strip !== null;
  const candidates = hasStrips ? [...blocks, { of: 'strip', grouping: strips }] : blocks;
  const groupings: { of: string; grouping: Grouping }[] = [];
  const leftOut: string[] = [];
  let known = design;
  let rank = independentColumns(known).length;
  for (const candidate of candidates) {
    const wider = join(known, candidate.grouping);
    const widerRank = independentColumns(wider).length;
    // As fine as the patches themselves: it can't be told from their own scatter.
    if (widerRank === rank || widerRank >= rows.length) leftOut.push(candidate.of);
    else {
      groupings.push(candidate);
      [known, rank] = [wider, widerRank];
    }
  }
  const strippedRank = hasStrips ? independentColumns(stripped).length : independentColumns(blocked).length;
  return {
    groupings,
    leftOut,
    wholePlotDf: columns.whole === null ? null : strippedRank - independentColumns(blocked).length,
    subPlotDf: rows.length - strippedRank,
    units: hasStrips ? strips : blocks.length > 0 ? blocks[0]!.grouping : rows.map((_, i) => i),
  };
}

/** Numbers the different names 0, 1, … in the order in which they first come. */
function groupingOf(names: readonly string[]): number[] {
  const order = [...new Set(names)];
  const index = new Map(order.map((name, i) => [name, i]));
  return names.map((name) => index.get(name)!);
}

function join(rows: readonly (readonly number[])[], ...groupings: readonly Grouping[]): number[][] {
  return rows.map((row, i) => [
    ...row,
    ...groupings.flatMap((grouping) =>
      Array.from({ length: Math.max(...grouping) + 1 }, (_, group) => Number(grouping[i] === group)),
    ),
  ]);
}
