import { describe, expect, it } from 'vitest';
import type { EtchTableIssue } from '../../src/records/etchTableEntry.ts';
import { tannicTable } from '../../src/studio/etch/tannicTable.ts';
import { expectRefused } from './expectRefused.ts';
import { type Refusal, rectangle, studioUnderTest } from './studioUnderTest.ts';

const zone = { id: 'sky', name: 'Sky', medium: 'crayon-5', polygonMm: rectangle(50, 50, 100, 100) };
const aRow = tannicTable.rows[2]!;
const rowsWith = (change: object) =>
  tannicTable.rows.map((row) => (row.strength === 'light' ? { ...row, ...change } : row));

describe('refused with one sentence and the path to the field, and nothing changed:', () => {
  it('plans and second etches with absurd amounts or of things that are not there', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01');
    const work = await studio.work(stone.id, 'Low Water');
    const gum = await studio.send<{ id: string }>('POST', '/api/batches', { kind: 'gum', name: 'Gum' });
    const path = `/api/works/${work.id}`;
    await expectRefused(
      studio,
      ['POST', `${path}/plans`],
      [
        [{ tableId: 'vinegar' }, 'reference-unknown', 'tableId'],
        [{ tableVersion: 99 }, 'reference-unknown', 'tableVersion'],
        [{ tannicBatchId: 'nowhere' }, 'reference-unknown', 'tannicBatchId'],
        [{ tannicBatchId: gum.body.id }, 'reference-unknown', 'tannicBatchId'],
        [{ tannicBatchId: 'x', tannic: { pH: 3 } }, 'body-malformed', 'tannic'],
        [{ tannic: { gramsPerLitre: 1e6 } }, 'body-malformed', 'tannic.gramsPerLitre'],
        [{ tannic: { pH: 15 } }, 'body-malformed', 'tannic.pH'],
        [{ people: 3 }, 'body-malformed', 'people'],
        [{ people: 0 }, 'body-malformed', 'people'],
        [{ filmMm: 100 }, 'body-malformed', 'filmMm'],
        [{ filmMm: -1 }, 'body-malformed', 'filmMm'],
        [{ layMm2PerSecond: 0 }, 'body-malformed', 'layMm2PerSecond'],
        [{ guardMm: -1 }, 'body-malformed', 'guardMm'],
      ],
    );
    await expectRefused(
      studio,
      ['POST', `${path}/second-etch`],
      [
        [{}, 'body-malformed', 'line'],
        [{ line: 'slow' }, 'body-malformed', 'line'],
        [{ line: 'full', planId: 'nowhere' }, 'reference-unknown', 'planId'],
        [
          { line: 'full', readings: [{ zone: 'cloud', reading: 'scum' }] },
          'reference-unknown',
          'readings[0].zone',
        ],
        [
          { line: 'full', readings: [{ zone: 'sky', reading: 'lovely' }] },
          'body-malformed',
          'readings[0].reading',
        ],
        [
          { line: 'full', readings: [{ zone: 'ground', reading: 'lights lost' }] },
          'body-malformed',
          'readings[0].reading',
        ],
        [
          {
            line: 'quick',
            readings: [
              { zone: 'sky', reading: 'scum' },
              { zone: 'sky', reading: 'closing' },
            ],
          },
          'body-malformed',
          'readings[1].zone',
        ],
      ],
    );
    expect(await studio.json(`${path}/plans`)).toEqual({ plans: [] });
    expect(await studio.json(`${path}/second-etch`)).toEqual({ secondEtches: [] });
  });

  it('table rows whose most is less than their least, and starting tables', async () => {
    const studio = await studioUnderTest();
    const { body: copy } = await studio.send<EtchTableIssue>('POST', '/api/etch-tables', {
      name: 'Ours',
      from: 'acid-in-gum',
    });
    const { id } = copy.table;
    const table = (rows: readonly object[]) => ({ version: 1, name: 'Ours', rows });
    const drops = { kind: 'drops', acid: 'nitric', into: 'gum' };
    const acid = (low: number, high: number) => ({
      ...aRow,
      recipe: { ...drops, dropsPer30Ml: { low, high } },
    });
    await expectRefused(
      studio,
      ['PUT', `/api/etch-tables/${id}`],
      [
        [
          table(rowsWith({ contactSeconds: { low: 200, wanted: null, high: 100 } })),
          'body-malformed',
          'rows[2].contactSeconds',
        ],
        [
          table(rowsWith({ contactSeconds: { low: 90, wanted: 400, high: 300 } })),
          'body-malformed',
          'rows[2].contactSeconds',
        ],
        [
          table(rowsWith({ contactSeconds: { low: -1, wanted: null, high: null } })),
          'body-malformed',
          'rows[2].contactSeconds.low',
        ],
        [table(rowsWith(acid(20, 13))), 'body-malformed', 'rows[2].recipe.dropsPer30Ml'],
        [table(rowsWith(acid(0, 1e6))), 'body-malformed', 'rows[2].recipe.dropsPer30Ml.high'],
        [table(rowsWith({ moveWithinSeconds: 0 })), 'body-malformed', 'rows[2].moveWithinSeconds'],
        [table(rowsWith({ basis: { basis: 'typed', note: '' } })), 'body-malformed', 'rows[2].basis.note'],
        [table(rowsWith({ strength: 'middle' })), 'body-malformed', 'rows'],
        [table([]), 'body-malformed', 'rows'],
        [table([aRow]), 'table-malformed', 'rows'],
        [{ ...table(tannicTable.rows), name: 'tannic ROUTE' }, 'name-taken', 'name'],
      ],
    );
    expect(await studio.json(`/api/etch-tables/${id}`)).toEqual(copy);
    const fixed = await studio.send<Refusal>('PUT', '/api/etch-tables/tannic', table(tannicTable.rows));
    expect([fixed.status, fixed.body.code]).toEqual([409, 'table-fixed']);
    await expectRefused(
      studio,
      ['POST', '/api/etch-tables'],
      [
        [{ name: 'Mine', from: 'nowhere' }, 'reference-unknown', 'from'],
        [{ name: 'ours', from: 'tannic' }, 'name-taken', 'name'],
      ],
    );
    for (const path of ['nowhere', 'nowhere/versions', `${id}/versions/9`, `${id}/changes?from=9`]) {
      expect((await studio.call(`/api/etch-tables/${path}`)).status, path).toBe(404);
    }
  });

  it('media: a deleted one that is in use, and the starting catalogue', async () => {
    const studio = await studioUnderTest();
    const medium = { id: 'river-crayon', name: 'River crayon', rule: { kind: 'fixed', strength: 'light' } };
    await studio.send('POST', '/api/media', medium);
    const stone = await studio.stone('S-01');
    const work = await studio.work(stone.id, 'Low Water', { zones: [{ ...zone, medium: 'river-crayon' }] });
    await expectRefused(
      studio,
      ['POST', '/api/media'],
      [
        [{ ...medium, id: 'River Crayon' }, 'body-malformed', 'id'],
        [medium, 'name-taken', 'id'],
        [{ ...medium, id: 'graphite' }, 'name-taken', 'id'],
        [{ ...medium, id: 'other', name: 'GRAPHITE' }, 'name-taken', 'name'],
        [
          { ...medium, id: 'other', rule: { kind: 'fixed', strength: 'brutal' } },
          'body-malformed',
          'rule.strength',
        ],
      ],
    );
    const remove = (id: string) => studio.send<Refusal>('DELETE', `/api/media/${id}`);
    const inUse = await remove('river-crayon');
    expect([inUse.status, inUse.body.code]).toEqual([409, 'medium-in-use']);
    expect(inUse.body.message).toBe('The medium River crayon is used by the zone Sky of the work Low Water.');
    await studio.send('PUT', `/api/works/${work.id}/put-by`, { version: 1, putBy: true });
    expect((await remove('river-crayon')).body.code).toBe('medium-in-use');
    await studio.send('PUT', `/api/works/${work.id}/put-by`, { version: 2, putBy: false });
    await studio.send('PATCH', `/api/works/${work.id}`, { version: 3, zones: [zone] });
    expect((await remove('river-crayon')).status).toBe(204);
    expect((await remove('river-crayon')).status).toBe(404);
    const fixed = await remove('graphite');
    expect([fixed.status, fixed.body.code]).toEqual([409, 'medium-fixed']);
    const change = await studio.send<Refusal>('PATCH', '/api/media/graphite', { version: 1, name: 'Lead' });
    expect([change.status, change.body.code]).toEqual([409, 'medium-fixed']);
  });

  it('batches and mixtures of absurd amounts', async () => {
    const studio = await studioUnderTest();
    const gum = { kind: 'gum', name: 'May' };
    await expectRefused(
      studio,
      ['POST', '/api/batches'],
      [
        [{ ...gum, kind: 'water' }, 'body-malformed', 'kind'],
        [{ ...gum, pH: 15 }, 'body-malformed', 'pH'],
        [{ ...gum, baume: 900 }, 'body-malformed', 'baume'],
        [{ ...gum, madeOn: 'May' }, 'body-malformed', 'madeOn'],
        [{ ...gum, madeOn: '2026-02-30' }, 'body-malformed', 'madeOn'],
        [{ ...gum, madeOn: '2999-01-01' }, 'body-malformed', 'madeOn'],
        [{ kind: 'tannic', name: 'May', gramsPerLitre: 0 }, 'body-malformed', 'gramsPerLitre'],
        [{ kind: 'base', name: 'Base', opened: '2999-01-01' }, 'body-malformed', 'opened'],
      ],
    );
    const { body: kept } = await studio.send<{ id: string }>('POST', '/api/batches', gum);
    await expectRefused(
      studio,
      ['PATCH', `/api/batches/${kept.id}`],
      [[{ version: 1, kind: 'tannic', pH: 3 }, 'body-malformed', 'kind']],
    );
    await expectRefused(
      studio,
      ['POST', '/api/mixtures'],
      [
        [{ kind: 'stew' }, 'body-malformed', 'kind'],
        [{ kind: 'parts', parts: [], totalMl: 10 }, 'body-malformed', 'parts'],
        [
          { kind: 'parts', parts: [{ material: 'gum', parts: 1 }], totalMl: 1e9 },
          'body-malformed',
          'totalMl',
        ],
        [{ kind: 'dilution', stock: 1, wanted: 0, wantedMl: 10 }, 'body-malformed', 'wanted'],
        [{ kind: 'strength', acid: 'nitric', percent: 101 }, 'body-malformed', 'percent'],
        [
          { kind: 'drops', drops: 0.5, dropsPerMl: 20, acidMolarity: 15, gumMl: 30 },
          'body-malformed',
          'drops',
        ],
      ],
    );
    for (const question of [
      { kind: 'dilution', stock: 5, wanted: 10, wantedMl: 100 },
      { kind: 'baume', baume: 1e5 },
    ]) {
      const impossible = await studio.send<Refusal>('POST', '/api/mixtures', question);
      expect([impossible.status, impossible.body.code]).toEqual([422, 'mixture-impossible']);
    }
    const answer = await studio.send('POST', '/api/mixtures', {
      kind: 'alligation',
      weakPercent: 0,
      strongPercent: 70,
      wantedPercent: 35,
    });
    expect(answer).toMatchObject({ status: 200, body: { kind: 'alligation' } });
  });

  it('things that are not there', async () => {
    const studio = await studioUnderTest();
    for (const [method, path, body] of [
      ['GET', 'stones/x', undefined],
      ['PATCH', 'stones/x', { version: 1 }],
      ['PUT', 'stones/x/put-by', { version: 1, putBy: true }],
      ['GET', 'works/x', undefined],
      ['PATCH', 'works/x', { version: 1 }],
      ['PUT', 'works/x/put-by', { version: 1, putBy: true }],
      ['GET', 'works/x/zones.json', undefined],
      ['PUT', 'works/x/zones.json', { version: 1, zones: [] }],
      ['GET', 'works/x/plans', undefined],
      ['POST', 'works/x/plans', {}],
      ['GET', 'works/x/plans/y', undefined],
      ['GET', 'works/x/second-etch', undefined],
      ['POST', 'works/x/second-etch', { line: 'full' }],
      ['GET', 'batches/x', undefined],
      ['PATCH', 'batches/x', { version: 1, kind: 'gum' }],
      ['PUT', 'batches/x/put-by', { version: 1, putBy: true }],
      ['PATCH', 'media/x', { version: 1 }],
      ['DELETE', 'media/x', undefined],
      ['PUT', 'etch-tables/x', { version: 1, name: 'X', rows: tannicTable.rows }],
    ] as const) {
      const answer = await studio.send<Refusal>(method, `/api/${path}`, body);
      expect.soft([answer.status, answer.body.code], `${method} ${path}`).toEqual([404, 'not-found']);
    }
  });
});
