import type { TrialColumns, TrialRow, TrialWarning, TrialWarningCode } from '../../records/trial.ts';
import type { MixedFit } from '../../science/statistics/mixed/varianceComponents.ts';
import { listWords } from './listWords.ts';
import { sameSplits } from './sameSplits.ts';
import type { TrialModel } from './trialModel.ts';
import type { TrialStrata } from './trialStrata.ts';

/** Fewer blocks than this say little of how blocks differ: our rule. */
const fewBlocks = 4;

/** Patches that were there and could not be read: what stands may be the easier half. */
export function unreadWarnings(lines: readonly number[]): TrialWarning[] {
  if (lines.length === 0) return [];
  const where = lines.length === 1 ? `line ${lines[0]}` : `lines ${lines.join(', ')}`;
  return [
    say(
      'left-out',
      `Patches without a reading were left out: ${where}. If they were lost, that is a finding.`,
    ),
  ];
}

/** What the table itself can't tell, whatever the readings are. */
export function tableWarnings(
  rows: readonly TrialRow[],
  columns: TrialColumns,
  model: TrialModel,
  strata: TrialStrata,
): TrialWarning[] {
  const found: TrialWarning[] = sameSplits(rows, columns).map((pair) => ({
    code: 'same-split',
    message: `${pair.one} and ${pair.other} always change together: no cause can be assigned between them.`,
  }));
  for (const { term, sets } of model.apart) {
    const standing = sets.filter((set) => set.length > 1);
    if (standing.length === 0) continue;
    const sentences = sets.map((set) => listWords(set)).join('; ');
    found.push(
      say(
        'never-apart',
        `What was tried of ${term} falls into sets that never came together with the same other thing: ${sentences}. Within a set it is compared; between sets no cause can be assigned.`,
      ),
    );
  }
  if (model.missingCells.length > 0)
    found.push(
      say(
        'cells-missing',
        `Never tried together: ${model.missingCells.join(', ')}. Whether one depends on the other is not answered.`,
      ),
    );
  if (strata.wholePlotDf === 0)
    found.push(
      say(
        'no-replicate',
        `Whatever was tried of ${columns.whole} was given to one strip only: how far two strips treated alike differ was never seen, so no cause can be assigned to a difference between strips. More patches in a strip don't help; another strip or stone does.`,
      ),
    );
  if (strata.subPlotDf === 0)
    found.push(
      say(
        'no-replicate',
        'No patch has a second one treated alike: how far two such patches differ was never seen, so no cause can be assigned to a difference between patches.',
      ),
    );
  for (const [k, name] of columns.blocks.entries()) {
    const blocks = new Set(rows.map((row) => row.blocks[k])).size;
    if (blocks === 1)
      found.push(
        say('one-block', `All patches lie in one ${name}: what holds here may not hold for another one.`),
      );
    else if (blocks < fewBlocks)
      found.push(
        say('few-blocks', `${name} has ${blocks} only: how far another one would differ is hardly known.`),
      );
  }
  return found;
}

/** What the fit can't tell. */
export function fitWarnings(
  rows: readonly TrialRow[],
  strata: TrialStrata,
  fit: MixedFit | null,
): TrialWarning[] {
  if (!fit) {
    const same = rows.every((row) => row.response === rows[0]!.response);
    return [
      same
        ? say('no-scatter', 'All readings are the same: there is no scatter to compare anything with.')
        : say(
            'not-fitted',
            'The readings are too few, or too much alike, to tell what was tried from scatter: means are given without a range.',
          ),
    ];
  }
  const blockDf = strata.leftOut.filter((of) => of !== 'strip');
  const found = blockDf.map((of) =>
    say('component-left-out', `How far one ${of} differs from another can't be told apart in this table.`),
  );
  for (const [k, { of }] of strata.groupings.entries())
    if (fit.variances[k]! < 0)
      found.push(
        say(
          'variance-below-zero',
          `Two of one ${of} differ more than two of different ones would by chance: the variance between them comes out below 0 and is left so.`,
        ),
      );
  return found;
}

function say(code: TrialWarningCode, message: string): TrialWarning {
  return { code, message };
}
