import { createHash } from 'node:crypto';
import type { TrialAssignment, TrialWish } from '../../records/trialDesign.ts';
import { csvLine } from './csvLine.ts';

/** Who gets what, as comma-separated text, and its SHA-256: the list that is opened after reading must be this one. */
export interface SealedList {
  readonly text: string;
  readonly seal: string;
}

/** The list of a trial, for whoever draws and etches; whoever reads must not see it before. */
export function sealedList(
  { whole, sub, perStone }: TrialWish,
  list: readonly TrialAssignment[],
): SealedList {
  const text = [
    csvLine(['code', ...(perStone ? [perStone.name] : []), ...(whole ? [whole.name] : []), sub.name]),
    ...list.map((each) =>
      csvLine([each.code, ...(perStone ? [each.perStone!] : []), ...(whole ? [each.whole!] : []), each.sub]),
    ),
  ].join('');
  return { text, seal: createHash('sha256').update(text).digest('hex') };
}
