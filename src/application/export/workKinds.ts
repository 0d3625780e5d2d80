import type { ExportRecord } from '../../store/readTables.ts';
import { column, type ExportKind, edited, zoned } from './exportColumn.ts';

/** Stones, what is drawn on them, how it is planned to be etched. */
export const workKinds: readonly ExportKind[] = [
  {
    name: 'stones',
    words: 'Stones.',
    table: 'stones',
    order: 'created_at, id',
    columns: edited(
      column('name', 'as the studio calls it'),
      column('widthMm', 'width', 'mm'),
      column('heightMm', 'height', 'mm'),
      column(
        'cornerThicknessMm',
        'thickness at the corners, clockwise from the head’s left; null: not measured',
        'mm',
      ),
      column('colour', 'in the trade’s words'),
      column('densityGPerCm3', 'density', 'g/cm³'),
      column('graining', 'each charge of grit'),
      column('straightedge', 'each gap under a straightedge'),
      column('pressSetUp', 'scraper, packing, eighths of a turn'),
      column('photographs', 'attached photographs'),
      column('note', 'what was noted'),
    ),
  },
  {
    name: 'works',
    words: 'Works: one image’s life on a stone.',
    table: 'works',
    order: 'created_at, id',
    columns: edited(
      column('title', 'title'),
      column('stoneId', 'its stone in stones'),
      column('stage', 'what was done last'),
      column('head', 'edge of the stone at which the image’s head lies'),
      column('origin', 'from graining on, or halfway with what is known of its past'),
      column('halfway', 'true where it was entered with a past'),
      column('rectangle', 'where it is measured, from the stone’s top left', 'mm'),
      column('zoneCount', 'how many zones'),
      column('zones', 'see zones'),
      column('photographs', 'attached photographs'),
      column('note', 'what was noted'),
    ),
  },
  {
    name: 'zones',
    words: 'Zones of works, one a line.',
    table: 'works',
    order: 'created_at, id',
    each: (work) => nested(work, 'zones', 'workId'),
    columns: [
      column('workId', 'its work in works'),
      column('id', 'its own within the work'),
      column('name', 'name'),
      column('medium', 'medium; see media'),
      column('deposit', 'light, middle, dark, solid or wash; empty: not said'),
      column('intention', 'empty: drawn'),
      column('polygonMm', 'outline from the stone’s top left, x right, y down', 'mm'),
      column('toneMean', 'mean coverage, 0..1', '', 'tone.mean'),
      column('toneDarkest', 'darkest coverage, 0..1', '', 'tone.darkest'),
      column('toneBasis', 'where that comes from', '', 'tone.basis'),
    ],
  },
  {
    name: 'plans',
    words: 'Plans of first and second etches, with all that they were made from.',
    table: 'plans',
    order: 'created_at, id',
    columns: [
      column('id', 'its own'),
      column('workId', 'its work in works'),
      column('line', 'first or second'),
      column('createdAt', 'when it was made', zoned),
      column('workVersion', 'how often the work had been saved when it was made, counted from 1'),
      column('tableId', 'etch table; see etch_tables'),
      column('tableVersion', 'which issue of it'),
      column('tannicBatchId', 'the solution in batches; empty: typed, or none'),
      column('feasible', 'true, false or unknown; empty for a second etch'),
      column('table', 'the etch table as it was'),
      column('request', 'first etch: what was asked, zones and times'),
      column('planId', 'second etch: the first etch’s plan'),
      column('zones', 'second etch: how the zones came up'),
      column('plan', 'areas (mm²), amounts (ml), moves (s)'),
    ],
  },
  {
    name: 'etch_tables',
    words: 'Etch tables in every issue.',
    table: 'etch_table_issues',
    order: 'table_id, version',
    columns: [
      column('tableId', 'the table'),
      column('version', 'which issue of it, counted from 1'),
      column('name', 'name'),
      column('starting', 'true for those that every studio starts with'),
      column('savedAt', 'when it was saved', zoned),
      column('rows', 'its rows, times in s'),
    ],
  },
  {
    name: 'media',
    words: 'The studio’s own media; the starting catalogue is left out.',
    table: 'media',
    order: 'id',
    columns: [
      column('id', 'as zones name it'),
      column('name', 'name'),
      column('version', 'raised by one at every save'),
      column('rule', 'which row of an etch table it takes'),
    ],
  },
  {
    name: 'deadlines',
    words: 'What works are to have reached by when.',
    table: 'deadlines',
    order: 'work_id',
    columns: [
      column('workId', 'its work in works'),
      column('goal', 'stage that is to be done; empty: taken away'),
      column('by', 'by when', zoned),
      column('second', 'full or quick second etch'),
      column('trialProofs', 'true with trial proofs'),
      column('times', 'stages that take longer or shorter here', 'minutes'),
      column('version', 'raised by one at every save'),
      column('changedAt', 'when it was saved last', zoned),
    ],
  },
];

/** The entries of a record's list, each with the record's id under `key`. */
export function* nested(record: ExportRecord, list: string, key: string): Iterable<ExportRecord> {
  const entries = record[list];
  if (!Array.isArray(entries)) return;
  for (const entry of entries) yield { ...(entry as object), [key]: record.id };
}
