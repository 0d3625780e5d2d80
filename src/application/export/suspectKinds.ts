import { column, type ExportKind, zoned } from './exportColumn.ts';

const outcome = [
  column('at', 'when', zoned),
  column('test', 'separating test; empty: a cause was found'),
  column('outcome', 'yes or no'),
  column('found', 'the cause that was found'),
];

/** What came of separating tests, and the causes that were found. */
export const suspectKinds: readonly ExportKind[] = [
  {
    name: 'suspect_outcomes',
    words: 'What came of separating tests, and causes that were found.',
    table: 'suspect_outcomes',
    order: 'at, id',
    columns: [column('id', 'its own'), column('comparisonId', 'its comparison in comparisons'), ...outcome],
  },
  {
    name: 'pull_suspect_outcomes',
    words: 'What came of separating tests at the proof desk, and causes that were found behind pulls.',
    table: 'pull_suspect_outcomes',
    order: 'at, id',
    columns: [column('id', 'its own'), column('pullId', 'its pull in pulls'), ...outcome],
  },
];
