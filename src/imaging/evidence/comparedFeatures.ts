import type { ComparisonRecord } from '../../records/comparison.ts';
import type { EvidenceRecord } from '../../records/evidence.ts';
import type { Features } from '../../records/suspects.ts';
import { recordFeatures } from './recordFeatures.ts';
import { seriesChanges } from './seriesChanges.ts';

/** One pull's comparison with the stone; evidence is null where only the record is left. */
export interface ComparedPull {
  readonly record: ComparisonRecord;
  readonly evidence: EvidenceRecord | null;
}

/**
 * What pulls of one stone show: the picture of the first of the last two, and what changed from it to the last; of more than two, what
 * grew over all of them that were measured.
 * @param pulls earliest first, at least one.
 * @returns features, and in words what could not be read and why.
 */
export function comparedFeatures(pulls: readonly ComparedPull[]): {
  readonly features: Features;
  readonly missing: readonly string[];
} {
  const later = pulls.at(-1)!;
  const earlier = pulls.at(-2) ?? later;
  if (earlier.record.verdict !== 'ok')
    return { features: {}, missing: ['The comparison was refused: nothing in it was measured.'] };
  const missing: string[] = [];
  if (!earlier.evidence)
    missing.push('There is no evidence.json beside the record: its maps could not be looked at.');
  const changes =
    earlier !== later && earlier.evidence && later.evidence ? seriesChanges(measuredOf(pulls)) : null;
  if (earlier !== later && !changes)
    missing.push(
      'The two comparisons could not be held against each other: they differ in size or lack evidence.json.',
    );
  return {
    features: { ...(earlier.evidence?.features ?? recordFeatures(earlier.record)), ...changes },
    missing,
  };
}

/** Pulls whose maps were looked at, numbered by their places. */
function measuredOf(pulls: readonly ComparedPull[]) {
  return pulls.flatMap(({ record, evidence }, i) =>
    record.verdict === 'ok' && evidence ? [{ number: i + 1, cells: evidence.cells }] : [],
  );
}
