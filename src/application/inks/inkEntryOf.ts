import type { Ink, InkDraft, InkEntry } from '../../records/ink.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { inkGrams, modifierPercent } from '../../studio/ink/inkMix.ts';

/** A mix with its shares and grams, and the title of the work that it was made for. */
export async function inkEntryOf(works: KeptRecords['works'], ink: Ink): Promise<InkEntry> {
  const softPercent = softPercentOf(ink);
  const { inkGrams: whole, modifierPercent: percent } = ink;
  const grams = softPercent === null || whole === null ? null : inkGrams(softPercent, whole);
  return {
    ...ink,
    softPercent,
    softGrams: grams?.softGrams ?? null,
    stiffGrams: grams?.stiffGrams ?? null,
    modifierGrams: whole === null || percent === null ? null : (whole * percent) / 100,
    modifierOfWholePercent: percent === null ? null : modifierPercent(percent, 100).ofWhole,
    workTitle: ink.workId === null ? null : ((await works.find(ink.workId))?.title ?? null),
  };
}

/** Known only where both parts are stated, and they are not both 0. */
function softPercentOf({ softParts, stiffParts }: InkDraft): number | null {
  if (softParts === null || stiffParts === null || softParts + stiffParts === 0) return null;
  return (100 * softParts) / (softParts + stiffParts);
}
