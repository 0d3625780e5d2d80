import type { ExportRecord, TableReader } from '../../store/readTables.ts';
import { column, type ExportKind, zoned } from './exportColumn.ts';
import { nested } from './workKinds.ts';

/** Each zone of a measured comparison. */
function* comparedZones(row: ExportRecord, reader: TableReader): Iterable<ExportRecord> {
  const record = typeof row.resultKey === 'string' ? reader.result(row.resultKey, 'comparison.json') : null;
  if (record !== null) yield* nested({ ...record, id: row.id }, 'zones', 'comparisonId');
}

/** Comparisons of stone and print. */
export const comparisonKinds: readonly ExportKind[] = [
  {
    name: 'comparisons',
    words: 'Stone beside print, as it was asked and found.',
    table: 'comparisons',
    order: 'created_at, id',
    columns: [
      column('id', 'its own'),
      column('title', 'title'),
      column('createdAt', 'when it was entered', zoned),
      column('state', 'waiting, measuring, measured, refused, not-done, stopped'),
      column('sample', 'true for the invented studio that ships with Stonetone'),
      column('request', 'photographs, corners, size (mm), zones, chips'),
      column('finding', 'what was found, in words'),
      column('failure', 'why it was not done'),
      column('resultKey', 'name of its result in the data folder'),
      column('queuedAt', 'when it was asked for last', zoned),
      column('interruptions', 'how often the program ended meanwhile'),
      column('putByAt', 'when it was taken off the list', zoned),
    ],
  },
  {
    name: 'comparison_zones',
    words: 'What became of each zone: coverage drawn and printed with 95 % intervals.',
    table: 'comparisons',
    order: 'created_at, id',
    each: comparedZones,
    columns: [
      column('comparisonId', 'its comparison in comparisons'),
      column('id', 'zone'),
      column('name', 'its name'),
      column('medium', 'its medium'),
      column('drawn', 'coverage drawn, 0..1', '', 'drawn.coverage'),
      column('drawnLow', 'low end of its 95 % interval', '', 'drawn.low'),
      column('drawnHigh', 'high end of its 95 % interval', '', 'drawn.high'),
      column('printed', 'coverage printed, 0..1', '', 'printed.coverage'),
      column('printedLow', 'low end of its 95 % interval', '', 'printed.low'),
      column('printedHigh', 'high end of its 95 % interval', '', 'printed.high'),
      column('change', 'held, lost, lighter, darker, filled, scum, undecided'),
    ],
  },
];
