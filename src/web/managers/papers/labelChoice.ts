import type { Edition } from '../../../records/edition.ts';
import { printsToLabel } from '../../../studio/papers/labelsOf.ts';
import type { LabelsChosen } from '../../client/labels.ts';
import { say } from '../../words/say.ts';

/** How many labels a page holds. */
const labelsAPage = 12;

/** What an address chooses beforehand, such as `?stones=a,b`. */
export function chosenIn(search: string): LabelsChosen {
  const asked = new URLSearchParams(search);
  const ids = (what: string) => (asked.get(what) ?? '').split(',').filter((id) => id !== '');
  return { stones: ids('stones'), batches: ids('batches'), editions: ids('editions'), prints: ids('prints') };
}

/** How many labels are chosen, and on how many pages they stand. */
export function labelCount(
  chosen: LabelsChosen,
  editions: readonly Edition[],
): { readonly labels: number; readonly pages: number } {
  const prints = editions
    .filter(({ id }) => chosen.editions.includes(id))
    .flatMap((edition) => printsToLabel(edition, chosen.prints));
  const labels = chosen.stones.length + chosen.batches.length + prints.length;
  return { labels, pages: Math.ceil(labels / labelsAPage) };
}

/** What is chosen, in words. */
export function labelCountWords({ labels, pages }: ReturnType<typeof labelCount>): string {
  if (labels === 0) return say('Choose what labels are wanted for');
  return say(
    '{labels, plural, one {One label} other {{labels} labels}} on {pages, plural, one {one page} other {{pages} pages}}',
    { labels, pages },
  );
}
