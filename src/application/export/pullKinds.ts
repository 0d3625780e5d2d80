import type { ExportRecord, TableReader } from '../../store/readTables.ts';
import { column, type ExportColumn, type ExportKind, edited, zoned } from './exportColumn.ts';

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

/** Pulls, what was read from them, and what was settled for them. */
export const pullKinds: readonly ExportKind[] = [
  {
    name: 'pulls',
    words: 'Pulls.',
    table: 'pulls',
    order: 'work_id, number, id',
    columns: edited(
      column('workId', 'its work in works'),
      column('number', 'its number on the stone'),
      column('editionId', 'the edition in editions whose sheet it is; empty: a proof'),
      column('impression', 'clientId of the sheet’s entry in ledger_entries'),
      column('kind', 'trial-proof, proof, for-approval, edition, other'),
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
      column('state', 'waiting, measuring, measured, refused, not-done, stopped'),
      column('queuedAt', 'when it was asked for', zoned),
      column('resultKey', 'name of its result in the data folder'),
      column('failure', 'why it was not done'),
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
];
