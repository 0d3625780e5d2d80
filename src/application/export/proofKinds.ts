import type { ExportRecord, TableReader } from '../../store/readTables.ts';
import { column, type ExportColumn, type ExportKind, edited, zoned } from './exportColumn.ts';
import { nested } from './workKinds.ts';

/** A measured value with its 95 % interval as three columns. */
function interval(name: string, words: string, path: string): readonly ExportColumn[] {
  return [
    column(name, words, '', `${path}.value`),
    column(`${name}Low`, 'low end of its 95 % interval', '', `${path}.low`),
    column(`${name}High`, 'high end of its 95 % interval', '', `${path}.high`),
  ];
}

/** A reading of a photograph with what it left. */
function* reading(row: ExportRecord, reader: TableReader): Iterable<ExportRecord> {
  const read = typeof row.resultKey === 'string' ? reader.result(row.resultKey, 'pull.json') : null;
  yield { ...row, read };
}

/** Each zone of a measured comparison. */
function* comparedZones(row: ExportRecord, reader: TableReader): Iterable<ExportRecord> {
  const record = typeof row.resultKey === 'string' ? reader.result(row.resultKey, 'comparison.json') : null;
  if (record !== null) yield* nested({ ...record, id: row.id }, 'zones', 'comparisonId');
}

const outcome = [
  column('at', 'when', zoned),
  column('test', 'separating test; empty: a cause was found'),
  column('outcome', 'yes or no'),
  column('found', 'the cause that was found'),
];

/** Pulls, what was read from them, comparisons, and test stones. */
export const proofKinds: readonly ExportKind[] = [
  {
    name: 'pulls',
    words: 'Pulls.',
    table: 'pulls',
    order: 'work_id, number, id',
    columns: edited(
      column('workId', 'its work in works'),
      column('number', 'its number on the stone'),
      column('editionId', 'the edition in editions that it is an impression of; empty: a proof'),
      column('impression', 'clientId of the impression in ledger_entries'),
      column('kind', 'trial-proof, proof, candidate, edition, other'),
      column('paper', 'paper', '', 'paper.words'),
      column('paperId', 'paper in kit', '', 'paper.id'),
      column('damp', 'true damp, false dry; empty: not known'),
      column('madeAt', 'when it was pulled', zoned),
      column('ink', 'ink', '', 'ink.words'),
      column('inkId', 'ink in inks or kit', '', 'ink.id'),
      column('charges', 'charges of ink on the roller before it'),
      column('passes', 'passes of the roller for each charge'),
      column('pressureEighths', 'from contact', 'eighths of a turn'),
      column('packing', 'packing'),
      column('roller', 'roller', '', 'roller.words'),
      column('rollerId', 'roller in kit', '', 'roller.id'),
      column('who', 'who pulled'),
      column('eyeLights', 'lights told by eye, 0..1', '', 'eye.lights'),
      column('eyeMiddles', 'middles told by eye, 0..1', '', 'eye.middles'),
      column('eyeDarks', 'darks told by eye, 0..1', '', 'eye.darks'),
      column('eyeAgeMinutes', 'since the pull', 'minutes', 'eye.ageMinutes'),
      column('eyeWho', 'who told it', '', 'eye.who'),
      column('faults', 'faults, each open until closed'),
      column('photographs', 'its photographs; see pull_readings'),
      column('remarks', 'remarks'),
    ),
  },
  {
    name: 'pull_readings',
    words: 'What was read from the photographs of pulls: darkness 1 − R/R_paper with 95 % intervals.',
    table: 'pull_measurings',
    order: 'pull_id, photograph_id',
    each: reading,
    columns: [
      column('pullId', 'its pull in pulls'),
      column('photographId', 'photograph in photographs'),
      column('attached', 'false where it was taken off the pull since'),
      column('state', 'waiting, measuring, measured, refused, failed, cancelled'),
      column('queuedAt', 'when it was asked for', zoned),
      column('resultKey', 'name of its result in the data folder'),
      column('failure', 'why it failed'),
      column('interruptions', 'how often the program ended meanwhile'),
      column('engine', 'what read it', '', 'read.engine'),
      ...interval('lights', 'darkness of the lights, 0..1', 'read.tones.lights'),
      ...interval('middles', 'darkness of the middles, 0..1', 'read.tones.middles'),
      ...interval('darks', 'darkness of the darks, 0..1', 'read.tones.darks'),
      ...interval('bare', 'darkness of what should be bare, 0..1', 'read.bare.darkness'),
      ...interval('strength', 'density of a full film above the paper', 'read.strength'),
      column('covered', 'share of the work rectangle on the sheet, 0..1', '', 'read.covered'),
      column('warnings', 'what to mind', '', 'read.warnings'),
      column('read', 'all that was read'),
    ],
  },
  {
    name: 'approvals',
    words: 'Good to print, as it was given.',
    table: 'approvals',
    order: 'given_at, id',
    columns: [
      column('id', 'its own'),
      column('workId', 'its work in works'),
      column('pullId', 'the approval proof in pulls'),
      column('pull', 'its number'),
      column('givenAt', 'when', zoned),
      column('artist', 'the artist’s mark'),
      column('printer', 'the printer’s mark'),
      column('restsOn', 'numbers of the pulls that it rests on'),
      column('tolerance', 'change of darkness that was accepted'),
      column('photograph', 'its photograph in photographs; empty: told by eye'),
      column('tones', 'darkness by tone, 0..1'),
    ],
  },
  {
    name: 'approval_withdrawals',
    words: 'Approvals that were taken back.',
    table: 'approval_withdrawals',
    order: 'at, approval_id',
    columns: [
      column('approvalId', 'the approval in approvals'),
      column('at', 'when', zoned),
      column('who', 'who'),
      column('why', 'why'),
    ],
  },
  {
    name: 'series_settings',
    words: 'What is settled for the pulls of a work.',
    table: 'series_settings',
    order: 'work_id',
    columns: [
      column('workId', 'its work in works'),
      column('tolerance', 'change of darkness that the artist accepts'),
      column('areas', 'where tones are read, from the stone’s top left', 'mm'),
      column('reference', 'darkness of a full film that all pulls are held against'),
      column('best', 'number of the best pull; empty: the approval proof'),
      column('version', 'raised by one at every save'),
      column('changedAt', 'when it was saved last', zoned),
    ],
  },
  {
    name: 'room_noise',
    words: 'What was typed for σ of one reading, until there were repeats.',
    table: 'room_noise',
    order: 'version',
    columns: [
      column('version', 'the last one counts'),
      column('typed', 'σ of darkness; empty: taken back'),
      column('savedAt', 'when', zoned),
    ],
  },
  {
    name: 'comparisons',
    words: 'Stone beside print, as it was asked and found.',
    table: 'comparisons',
    order: 'created_at, id',
    columns: [
      column('id', 'its own'),
      column('title', 'title'),
      column('createdAt', 'when it was entered', zoned),
      column('state', 'waiting, measuring, measured, refused, failed, cancelled'),
      column('sample', 'true for the invented studio that ships with Stonetone'),
      column('request', 'photographs, corners, size (mm), zones, chips'),
      column('finding', 'what was found, in words'),
      column('failure', 'why it failed'),
      column('resultKey', 'name of its result in the data folder'),
      column('queuedAt', 'when it was asked for last', zoned),
      column('interruptions', 'how often the program ended meanwhile'),
      column('archivedAt', 'when it was taken off the list', zoned),
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
  {
    name: 'test_stones',
    words: 'Test stones: patches, what each got, and their photographs.',
    table: 'test_stones',
    order: 'created_at, id',
    columns: edited(
      column('name', 'as the studio calls it'),
      column('stoneId', 'its stone in stones; empty: not kept here'),
      column('workId', 'the work in works that its etch and proofs are logged under'),
      column('drawnOn', 'day on which it was drawn'),
      column('sizeMm', 'width and height of what the corners enclose', 'mm'),
      column('grid', 'the grid that patches were last laid by', 'mm'),
      column('factors', 'what was varied, and to what each was given at once'),
      column('patches', 'outline (mm), intention and treatment of each patch'),
      column('drawn', 'photograph of the drawn stone in photographs, with its corners (px)'),
      column('ruler', 'two marks of a ruler on it (px) and how far apart they are (mm)'),
      column('prints', 'photographs of its prints, each with its comparison in comparisons'),
      column('judgedBy', 'the print whose findings are the stone’s; empty: the last that was read'),
      column('note', 'what was noted'),
      column(
        'planned',
        'the plan in test_plans that it was made of, and the seal of its list; empty: of none',
      ),
    ),
  },
  {
    name: 'test_plans',
    words: 'Planned tests: what is to be known, with what, and the test stones that were made of them.',
    table: 'test_plans',
    order: 'created_at, id',
    columns: edited(
      column('title', 'what one wants to know'),
      column('treatments', 'what is varied: levels, kind, and to what each is given at once'),
      column('control', 'the level that the others are compared with; empty: all pairs'),
      column('widthMm', 'width of the stone', 'mm'),
      column('heightMm', 'height of the stone', 'mm'),
      column('stones', 'how many stones'),
      column('patchRepeats', 'patches alike in a strip'),
      column('stripRepeats', 'strips alike on a stone'),
      column('lay', 'how patches lie where nothing is given to whole strips: blocked or row-column'),
      column('blocks', 'how a stone is parted into blocks'),
      column('wanted', 'smallest difference of coverage that matters', '0..1'),
      column('cameraPixels', 'long side of the photograph', 'px'),
      column('seed', 'number that the lots are drawn from'),
      column('ownEtches', 'etches that are in no table: parts by volume and time of contact (s)'),
      column('testStones', 'test stones in test_stones that were made of it'),
    ),
  },
  {
    name: 'test_stone_events',
    words: 'Readings of patches put right by hand, lists opened, and blind readings by eye.',
    table: 'test_stone_events',
    order: 'test_stone_id, sequence',
    columns: [
      column('testStoneId', 'its test stone in test_stones'),
      column('sequence', '1 for the first of a test stone'),
      column('clientId', 'its own; a blind reading’s id where it began one'),
      column('kind', 'corrected, list-opened, sitting-begun, seen'),
      column('at', 'when it was kept', zoned),
      column('actor', 'whose hand or eye it was'),
      column('payload', 'print, patch, hold, why; or sitting, patch, hold'),
    ],
  },
];
