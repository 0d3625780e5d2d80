import { createReport } from '../../../application/papers/reports.ts';
import { must } from './must.ts';
import type { YearParts } from './yearClock.ts';

/** The account that the Trust is owed: every work of the year, the edition, the measured prints. */
export async function writeReport(
  parts: YearParts,
  id: string,
  given: { readonly works: readonly string[]; readonly edition: string },
): Promise<void> {
  const { store } = parts;
  const works = await Promise.all(given.works.map((work) => store.works.find(work)));
  const photographs = works.flatMap((work) => work!.photographs.map(({ photograph }) => photograph));
  const comparisons = await store.comparisons.ofPhotographs(photographs);
  must(
    await createReport(
      { ...parts, newId: () => id },
      {
        title: 'Twelve Tides: the first year',
        reader: 'Saltreach Harbour Trust',
        from: '2025-11-01',
        to: '2026-11-30',
        works: given.works,
        comparisons: comparisons.map((one) => one.id),
        editions: [given.edition],
        words: {
          aims: [
            'To etch stones without nitric acid, and to print the first of the Twelve Tides from one of them.',
          ],
          tried: [
            'On ',
            { figure: 'stones' },
            ' stones ',
            { figure: 'works' },
            ' works were drawn; ',
            { figure: 'runs' },
            ' runs were logged at the bench.',
          ],
          found: [
            { figure: 'pulls' },
            ' pulls are recorded. Of ',
            { figure: 'zones' },
            ' measured zones ',
            { figure: 'zones held' },
            ' held.',
          ],
          materials: [
            'Of tannic solution ',
            { figure: 'tannic solution ml' },
            ' were used. What nobody logged is told as only planned.',
          ],
          edition: [
            { figure: 'good' },
            ' good prints were pulled, ',
            { figure: 'prints numbered' },
            ' of them are numbered.',
          ],
          next: ['A second colour for Mooring; a third test stone for washes.'],
        },
        replacements: [
          {
            before: 'Nitric acid',
            beforeMaterialId: 'saltreach-material-nitric',
            beforeMl: 60,
            beforeFrom: 'the bottles of the year before, invented for the sample',
            now: 'tannic solution',
            nowMaterialId: 'saltreach-material-tannic',
          },
        ],
      },
    ),
  );
}
