import type { Hold } from '../../../records/patchReading.ts';
import type { HoldShare, HoldVerdict, TreatmentHold, TrialUnit } from '../../../records/testStoneAnswer.ts';
import {
  type Cluster,
  effectiveCount,
  intraclassCorrelation,
} from '../../../science/statistics/clusteredShare.ts';
import { clopperPearson, leastShare, scoreInterval } from '../../../science/statistics/proportionInterval.ts';
import { treatmentName } from './treatmentName.ts';
import type { TrialPatchRow } from './trialPatches.ts';
import { countUnits, groupsOf } from './trialUnits.ts';

/** How alike patches of one unit held, and where that comes from. */
export interface Alike {
  readonly value: number;
  readonly origin: 'estimated' | 'assumed';
}

/** A share at which something holds more often than not: our rule. */
const mostly = 0.5;
const level = 0.95;
/**
 * The estimate counts as much as its degrees of freedom against this many for "all patches of one unit are alike": with few
 * stones the estimate alone made intervals that held the truth in 91 % (two stones, four patches each). Our rule.
 */
const caution = 1.5;

/**
 * How alike the patches of one unit hold, pooled over treatments; where nothing tells, they are taken for one reading.
 * @param groups rows of one treatment each.
 */
export function alikeAmong(groups: readonly (readonly TrialPatchRow[])[]): Alike {
  const clusters = groups.map((rows) => clustersOf(rows, countedBy(rows)));
  const estimated = intraclassCorrelation(clusters);
  if (estimated === null) return { value: 1, origin: 'assumed' };
  const freedom = clusters.reduce((sum, own) => sum + Math.max(0, own.length - 1), 0);
  return { value: (freedom * estimated + caution) / (freedom + caution), origin: 'estimated' };
}

/**
 * What became of the patches of one treatment, counted by stones where there are several, else by strips, never by patches that
 * were treated together nor by prints.
 */
export function treatmentHold(
  rows: readonly TrialPatchRow[],
  treatment: Readonly<Record<string, string>>,
  alike: Alike,
): TreatmentHold {
  const counts: Record<Hold, number> = { lost: 0, weak: 0, held: 0, filled: 0 };
  for (const { hold } of rows) if (hold !== null) counts[hold] += 1;
  const share = shareOf(rows, alike);
  return {
    treatment,
    name: treatmentName(treatment),
    counts,
    unread: rows.filter(({ hold }) => hold === null).length,
    share,
    verdict: share ? verdictOf(share, countUnits(rows, 'stone')) : 'open',
  };
}

/** What one independent reading of these rows is. */
function countedBy(rows: readonly TrialPatchRow[]): TrialUnit {
  return countUnits(rows, 'stone') > 1 ? 'stone' : 'strip';
}

function clustersOf(rows: readonly TrialPatchRow[], unit: TrialUnit): Cluster[] {
  const read = rows.filter(({ hold }) => hold !== null);
  return groupsOf(read, unit).map((own) => ({
    hits: own.filter(({ hold }) => hold === 'held').length,
    trials: own.length,
  }));
}

function shareOf(rows: readonly TrialPatchRow[], alike: Alike): HoldShare | null {
  const unit = countedBy(rows.filter(({ hold }) => hold !== null));
  const clusters = clustersOf(rows, unit);
  if (clusters.length === 0) return null;
  const { counted, hits } = effectiveCount(clusters, alike.value);
  const unitsHeld = clusters.filter((one) => one.hits === one.trials).length;
  const unitsAny = clusters.filter((one) => one.hits > 0).length;
  const exact = clopperPearson(unitsHeld, clusters.length, level);
  const anyExact = clopperPearson(unitsAny, clusters.length, level);
  return {
    value: hits / counted,
    ...scoreInterval(hits, counted, level),
    exactLow: exact.low,
    exactHigh: anyExact.high,
    least: leastShare(unitsHeld, clusters.length, level),
    most: 1 - leastShare(clusters.length - unitsAny, clusters.length, level),
    unit,
    units: clusters.length,
    unitsHeld,
    patches: clusters.reduce((sum, one) => sum + one.trials, 0),
    patchesHeld: clusters.reduce((sum, one) => sum + one.hits, 0),
    counted,
  };
}

function verdictOf({ least, most }: HoldShare, stones: number): HoldVerdict {
  if (least >= mostly) return stones > 1 ? 'holds' : 'holds-here';
  if (most <= mostly) return stones > 1 ? 'fails' : 'fails-here';
  return 'open';
}
