/** Rows as a program of each version wrote them: entry n fills a database of version n + 1. */
export const dataOfVersions: readonly (readonly string[])[] = [
  [
    `INSERT INTO photographs VALUES ('aa', 'stone.jpg', 'jpeg', 4000, 3000, 1234567, '2026-01-02T03:04:05.678Z')`,
    `INSERT INTO comparisons (id, title, created_at, state, request_json, finding, queued_at)
     VALUES ('one', 'Low Water', '2026-01-02T04:00:00.000Z', 'measured', '{"zones":[]}', 'Lights LOST', '2026-01-02T04:00:00.000Z')`,
    `INSERT INTO comparison_photographs VALUES ('one', 'aa')`,
  ],
  [
    `INSERT INTO comparisons (id, title, created_at, state, request_json, queued_at, interruptions)
     VALUES ('two', 'High Water', '2026-02-02T04:00:00.000Z', 'waiting', '{"zones":[]}', '2026-02-02T04:00:00.000Z', 1)`,
    `INSERT INTO comparisons (id, title, created_at, state, request_json, queued_at)
     VALUES ('burnt-out', 'Spring Tide', '2026-02-03T04:00:00.000Z', 'failed', '{"zones":[]}', '2026-02-03T04:00:00.000Z')`,
    `INSERT INTO comparisons (id, title, created_at, state, request_json, queued_at)
     VALUES ('left-off', 'Neap Tide', '2026-02-04T04:00:00.000Z', 'cancelled', '{"zones":[]}', '2026-02-04T04:00:00.000Z')`,
  ],
  [],
  [
    `INSERT INTO stones VALUES ('stone', '2026-03-01T00:00:00.000Z', '2026-03-01T00:00:00.000Z', 1, 0, 0, 's-01', 'S-01',
      's-000000000001', 400, 500, 'grey', '{"name":"S-01"}')`,
    `INSERT INTO works VALUES ('work', '2026-03-01T00:00:00.000Z', '2026-03-02T00:00:00.000Z', 3, 0, 0, 'low water',
      'stone', 'Low Water', 'drawn', 0, 1, '{"title":"Low Water","stoneId":"stone"}')`,
    `INSERT INTO work_photographs VALUES ('work', 'aa')`,
    `INSERT INTO work_media VALUES ('work', 'river-crayon', 'Sky')`,
    `INSERT INTO media VALUES ('river-crayon', 'River crayon', 1, '{"kind":"none"}')`,
    `INSERT INTO batches VALUES ('batch', '2026-03-01T00:00:00.000Z', '2026-03-01T00:00:00.000Z', 1, 0, 0, 'may', 'tannic',
      '{"name":"May","kind":"tannic"}')`,
    `INSERT INTO etch_table_versions VALUES ('own', 2, 'Ours', 0, '2026-03-01T00:00:00.000Z', '[]')`,
    `INSERT INTO plans VALUES ('plan', 'work', 'first', '2026-03-03T00:00:00.000Z', 3, 'own', 2, 'batch', 'true',
      '{"id":"plan"}')`,
  ],
  [
    `INSERT INTO runs VALUES ('run', 'begun-once', 'work', 'plan', 3, '2026-03-04T00:00:00.000Z')`,
    `INSERT INTO run_events VALUES ('run', 1, 'tap-1', 'laid', '2026-03-04T01:00:00+01:00', NULL,
      '2026-03-04T00:00:01.000Z', 'P.R.', 'phone', '{"place":"sky"}')`,
  ],
  [
    `INSERT INTO kit VALUES ('heron', '2026-03-05T00:00:00.000Z', '2026-03-05T00:00:00.000Z', 2, 0, 0, 'heron', 'roller',
      '{"tool":"roller","name":"Heron"}')`,
  ],
  [
    `INSERT INTO pulls VALUES ('pull', 'work', 3, '2026-03-06T00:00:00.000Z', '2026-03-06T00:00:00.000Z', 1, 0, 0,
      '{"number":3,"paper":{"id":null,"words":"rag"}}')`,
    `INSERT INTO pulls VALUES ('fourth', 'work', 4, '2026-03-06T00:00:00.000Z', '2026-03-06T00:00:00.000Z', 1, 0, 0,
      '{"number":4,"kind":"candidate","pressureEighths":6.5}')`,
    `INSERT INTO pull_measurings VALUES ('pull', 'aa', 1, 'waiting', '2026-03-06T00:00:00.000Z', NULL, NULL, 0)`,
    `INSERT INTO series_settings VALUES ('work', 1, '2026-03-06T00:00:00.000Z', '{"tolerance":0.03}')`,
    `INSERT INTO room_noise VALUES (1, 0.01, '2026-03-06T00:00:00.000Z')`,
    `INSERT INTO approvals VALUES ('given', 'work', 'pull', '2026-03-07T00:00:00.000Z', '{"id":"given","pull":3}')`,
    `INSERT INTO approval_withdrawals VALUES ('given', '2026-03-08T00:00:00.000Z', 'A.T.', 'the moon closes')`,
  ],
  [
    `INSERT INTO editions VALUES ('edition', 'work', '2026-03-05T00:00:00.000Z', '2026-03-05T00:00:00.000Z', 1, 0, 0,
      '{"title":"Low Water","size":5}')`,
    `INSERT INTO ledger_entries VALUES ('edition', 1, 'sheet-1', 'impression', '2026-03-05T01:00:00+01:00', NULL,
      '2026-03-05T00:00:01.000Z', 'P.R.', 'phone', 'aa', '{"verdict":"good","photograph":"aa"}')`,
    `INSERT INTO ledger_entries VALUES ('edition', 2, 'sheet-2', 'impression', '2026-03-05T01:06:00+01:00', NULL,
      '2026-03-05T00:06:01.000Z', 'P.R.', 'phone', NULL, '{"verdict":"good"}')`,
    `INSERT INTO edition_prints VALUES ('edition', 'sheet-1', 'edition', 1)`,
  ],
  [`INSERT INTO run_folds VALUES ('run', 1, 'these rules', 'a seal', '{}')`],
  [
    `INSERT INTO studio_settings VALUES (1, 2, '2026-03-09T00:00:00.000Z', '{"timeZone":"Europe/London"}')`,
    `INSERT INTO deadlines VALUES ('work', 1, '2026-03-09T00:00:00.000Z', '{"goal":"proofs"}')`,
  ],
  [
    `INSERT INTO inks VALUES ('ink', '2026-03-09T00:00:00.000Z', '2026-03-09T00:00:00.000Z', 1, 0, 0, 'mudbank', 'work',
      'good', '{"name":"Mudbank","softParts":70,"stiffParts":30}')`,
  ],
  [
    `INSERT INTO materials VALUES ('gum', '2026-03-10T00:00:00.000Z', '2026-03-10T00:00:00.000Z', 1, 0, 0, 'gum',
      '{"name":"Gum","hazards":[]}')`,
  ],
  [
    `INSERT INTO suspect_outcomes VALUES ('tested', 'one', '2026-03-10T00:00:00.000Z', 'water-wipe', 'no', NULL)`,
    `INSERT INTO suspect_outcomes VALUES ('closed', 'one', '2026-03-11T00:00:00.000Z', NULL, NULL, 'scum')`,
  ],
  [
    `INSERT INTO reports VALUES ('year', '2026-03-12T00:00:00.000Z', '2026-03-12T00:00:00.000Z', 2, 0, 0, 'year',
      '{"title":"A year","works":["work"]}')`,
    `INSERT INTO foreign_protocols VALUES ('ebb', '2026-03-12T00:00:00.000Z', '2026-03-12T00:00:00.000Z', 1, 1, 0, 'ebb',
      '{"note":"","protocol":{"title":"Ebb"}}')`,
  ],
  [
    `INSERT INTO pulls VALUES ('shown', 'work', 3, '2026-03-13T00:00:00.000Z', '2026-03-13T00:00:00.000Z', 1, 0, 0,
      '{"number":3,"paper":{"id":null,"words":"rag"}}', 'edition', 'sheet-1')`,
  ],
  [
    `INSERT INTO pull_suspect_outcomes VALUES ('wiped', 'shown', '2026-03-14T00:00:00.000Z', NULL, NULL, 'tint')`,
  ],
  [
    `INSERT INTO test_stones VALUES ('t-1', '2026-03-15T00:00:00.000Z', '2026-03-15T00:00:00.000Z', 1, 0, 0, 't-1',
      '{"name":"T-1","patches":[],"factors":[],"drawn":null,"prints":[]}')`,
    `INSERT INTO test_stone_photographs VALUES ('t-1', 'aa')`,
    `INSERT INTO test_stone_events VALUES ('t-1', 1, 'tap', 'corrected', '2026-03-15T00:00:01.000Z', 'P.R.',
      '{"print":"p","patch":"A1","hold":"weak","why":"glare"}')`,
  ],
  [
    `INSERT INTO devices VALUES ('phone', 'Bench phone', 'a seal', '2026-03-15T00:00:00.000Z', '2026-03-16T00:00:00.000Z',
      '2026-03-17T00:00:00.000Z')`,
  ],
  [
    `INSERT INTO test_plans VALUES ('planned', '2026-03-18T00:00:00.000Z', '2026-03-18T00:00:00.000Z', 2, 0, 0, 't-5', 0,
      '{"title":"T-5","treatments":[],"testStones":[]}')`,
  ],
  [
    `INSERT INTO comparisons (id, title, created_at, state, request_json, queued_at)
     VALUES ('blurred', 'Ebb', '2026-03-19T00:00:00.000Z', 'not-done', '{"zones":[]}', '2026-03-19T00:00:00.000Z')`,
  ],
  [
    `INSERT INTO stones (id, created_at, changed_at, version, put_by, sample, search_text, name, name_key, width_mm,
      height_mm, colour, record_json) VALUES ('gone', '2026-03-20T00:00:00.000Z', '2026-03-20T00:00:00.000Z', 1, 1, 0, 's-09',
      'S-09', 's-000000000009', 400, 500, 'grey', '{"name":"S-09"}')`,
  ],
  [
    `INSERT INTO pulls (id, work_id, number, created_at, changed_at, version, put_by, record_json)
      VALUES ('fifth', 'work', 5,
      '2026-03-21T00:00:00.000Z', '2026-03-21T00:00:00.000Z', 1, 1, '{"number":5,"kind":"for-approval"}')`,
  ],
  [
    `INSERT INTO devices (id, name, token_seal, let_in_at, last_seen_at, shut_out_at) VALUES ('tablet', 'Press tablet',
      'another seal', '2026-03-22T00:00:00.000Z', '2026-03-22T00:00:00.000Z', NULL)`,
  ],
  [
    `INSERT INTO etch_table_issues (table_id, version, name, starting, saved_at, rows_json) VALUES ('own', 3, 'Ours', 0,
      '2026-03-23T00:00:00.000Z', '[]')`,
  ],
];
