import { expect, it } from 'vitest';
import type { RunState } from '../../src/records/bench.ts';
import type { EditionDocumentation, RecordedAt } from '../../src/records/documentation.ts';
import type { Edition } from '../../src/records/edition.ts';
import type { EditionPlan } from '../../src/records/editionPlan.ts';
import type { EditionStart } from '../../src/records/editionStart.ts';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import type { LedgerEntry } from '../../src/records/ledger.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import { isoDayWords } from '../../src/science/calendar/dateWords.ts';
import { ledgerState } from '../../src/studio/editions/ledgerState.ts';
import { mediumOf } from '../../src/studio/etch/mediumCatalogue.ts';
import { type Answer, type Refusal, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

const at = '2026-03-04T09:30:00+01:00';

async function anEdition(studio: StudioUnderTest, more: object = {}): Promise<Edition> {
  const stone = await studio.stone('S-01');
  const work = await studio.work(stone.id, 'Low Water');
  const answer = await studio.send<Edition>('POST', `/api/works/${work.id}/editions`, {
    title: 'Twelve Tides',
    size: 5,
    ...more,
  });
  expect(answer.status).toBe(201);
  return answer.body;
}

function expectNo(answer: Answer, status: number, code: string): void {
  expect(answer).toMatchObject({ status, body: { code } });
}

const logIn = (studio: StudioUnderTest, id: string) => (body: object) =>
  studio.send<LedgerEntry>('POST', `/api/editions/${id}/ledger`, { at, ...body });

/** Prints n impressions, ids i1 … */
async function print(studio: StudioUnderTest, id: string, verdicts: readonly string[]): Promise<void> {
  for (const [index, verdict] of verdicts.entries()) {
    const entry = { clientId: `i${index + 1}`, kind: 'impression', payload: { verdict } };
    expect((await logIn(studio, id)(entry)).status).toBe(201);
  }
}

it('an edition may start from the pull that is good to print, and from the drawing where none is', async () => {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-01');
  const work = await studio.work(stone.id, 'Low Water');
  const start = () => studio.json<EditionStart>(`/api/works/${work.id}/edition-start`);
  expect(await start()).toMatchObject({
    pull: null,
    paperName: null,
    inkedCm2: { from: 'From the drawing’s zones and their tones; no print was read for it.' },
  });
  for (const number of [1, 2, 3]) {
    const pull = await studio.send('POST', `/api/works/${work.id}/pulls`, {
      number,
      paper: { words: 'rag 250' },
      damp: true,
      ink: { words: 'mudbank black' },
      eye: { lights: 0.1, middles: 0.4, darks: 0.8, who: 'P.R.' },
    });
    expect(pull.status).toBe(201);
  }
  const given = await studio.send('POST', `/api/works/${work.id}/approvals`, {
    pull: 3,
    artist: 'A.T.',
    printer: 'P.R.',
  });
  expect(given.status).toBe(201);
  expect(await start()).toMatchObject({
    pull: { number: 3 },
    paperName: { value: 'rag 250', from: 'Pull 3, good to print, is on it.' },
    damped: { value: 'yes' },
    ink: { value: 'mudbank black' },
    approvedBy: { value: 'A.T., P.R.' },
    approval: { value: { lights: 0.1, middles: 0.4, darks: 0.8 } },
  });
  expectNo(await studio.send('GET', '/api/works/none/edition-start'), 404, 'not-found');
});

it('an edition is entered, read, changed and put by; a stale save changes nothing', async () => {
  const studio = await studioUnderTest();
  const edition = await anEdition(studio);
  expect(edition).toMatchObject({ version: 1, prints: [], artistProofs: null, paper: { sheetMm: null } });
  const path = `/api/editions/${edition.id}`;
  const changed = await studio.send<Edition>('PATCH', path, { version: 1, artist: 'A.T.' });
  expect(changed.body).toMatchObject({ version: 2, artist: 'A.T.', size: 5 });
  const stale = await studio.send<Refusal<Edition>>('PATCH', path, { version: 1, artist: 'P.R.' });
  expect(stale).toMatchObject({ status: 409, body: { code: 'stale-save', current: { artist: 'A.T.' } } });
  const unknown = await studio.send('PATCH', path, { version: 2, approvalPullId: 'none' });
  expectNo(unknown, 422, 'reference-unknown');
  const pull = await studio.send<{ id: string }>('POST', `/api/works/${edition.workId}/pulls`, {
    number: 1,
    paper: { id: null, words: 'rag' },
  });
  expect(pull.status).toBe(201);
  const approved = { version: 2, approvalPullId: pull.body.id };
  expect((await studio.send('PATCH', path, approved)).status).toBe(200);
  const shelved = await studio.send<Edition>('PUT', `${path}/put-by`, { version: 3, putBy: true });
  expect(shelved.body.putBy).toBe(true);
  expectNo(await studio.send('PATCH', path, { version: 4, artist: 'X' }), 409, 'put-by');
  const list = await studio.json<{ editions: Edition[] }>(`/api/works/${edition.workId}/editions`);
  expect(list.editions.map(({ id }) => id)).toEqual([edition.id]);
  expectNo(await studio.send('GET', '/api/editions/none'), 404, 'not-found');
  expectNo(await studio.send('POST', '/api/works/none/editions', { title: 'x', size: 1 }), 404, 'not-found');
});

it('the ledger keeps every entry once and in order', async () => {
  const studio = await studioUnderTest();
  const { id } = await anEdition(studio);
  const log = logIn(studio, id);
  const first = await log({ clientId: 'a', kind: 'impression', payload: { verdict: 'good' } });
  expect(first).toMatchObject({ status: 201, body: { sequence: 1 } });
  expect(await log({ clientId: 'a', kind: 'impression', payload: { verdict: 'torn' } })).toEqual(first);
  await Promise.all(
    Array.from({ length: 12 }, (_, index) => log({ clientId: `b${index % 6}`, kind: 'charged' })),
  );
  const { entries } = await studio.json<{ entries: LedgerEntry[] }>(`/api/editions/${id}/ledger`);
  expect(entries.map(({ sequence }) => sequence)).toEqual([1, 2, 3, 4, 5, 6, 7]);
  const lost = {
    clientId: 'c',
    kind: 'impression',
    payload: { verdict: 'good', photograph: 'none' },
  };
  expectNo(await log(lost), 422, 'photograph-unknown');
  const photograph = await studio.photograph('print.png');
  const seen = { ...lost, payload: { verdict: 'good', photograph: photograph.id } };
  expect((await log(seen)).status).toBe(201);
  expectNo(
    await log({ clientId: 'd', kind: 'impression', payload: { verdict: 'fine' } }),
    400,
    'body-malformed',
  );
});

it('numbers are given once; what can’t be is refused and changes nothing', async () => {
  const studio = await studioUnderTest();
  const edition = await anEdition(studio);
  await print(studio, edition.id, ['good', 'good', 'torn']);
  const path = `/api/editions/${edition.id}/prints`;
  const give = (version: number, ...prints: readonly (readonly [string, string, number | null])[]) =>
    studio.send<Edition>('PUT', path, {
      version,
      prints: prints.map(([impression, kind, number]) => ({ impression, kind, number })),
    });
  expectNo(await give(1, ['i1', 'edition', 1], ['i2', 'edition', 1]), 409, 'number-given-twice');
  expectNo(await give(1, ['i3', 'edition', 1]), 422, 'curation-impossible');
  const given = await give(1, ['i1', 'edition', 1], ['i2', 'artist', 1], ['i3', 'destroyed', null]);
  expect(given).toMatchObject({ status: 200, body: { version: 2 } });
  expect(given.body.prints).toHaveLength(3);
  const two = await Promise.all([
    give(2, ['i1', 'edition', 2]),
    give(2, ['i2', 'edition', 2], ['i1', 'edition', 1]),
  ]);
  expect(two.map(({ status }) => status).sort()).toEqual([200, 409]);
  const smaller = await studio.send('PATCH', `/api/editions/${edition.id}`, { version: 3, size: 1 });
  expectNo(smaller, 422, 'curation-impossible');
});

it('spoilage and pace are this room’s once its ledgers say enough', async () => {
  const studio = await studioUnderTest();
  const { id } = await anEdition(studio);
  const plan = () => studio.json<EditionPlan>(`/api/editions/${id}/plan`);
  expect(await plan()).toMatchObject({ sheetsInAll: 15, spoilage: { value: 0.3, impressions: 0 } });
  await print(studio, id, Array(20).fill('torn').fill('good', 0, 10));
  expect(await plan()).toMatchObject({
    sheetsInAll: 17,
    spoilage: { value: 1, basis: 'this room', impressions: 20 },
  });
});

it('every figure of the documentation is found where it says it is kept; blanks stay blank', async () => {
  const studio = await studioUnderTest();
  const edition = await anEdition(studio, {
    artist: 'A.T.',
    paper: { name: 'Creek rag 300', gramsPerM2: 300, pieceMm: [380, 280], damped: 'yes' },
    signedOn: '2026-03-09',
    ink: 'black, 70 soft : 30 stiff',
  });
  const read = () => studio.json<EditionDocumentation>(`/api/editions/${edition.id}/documentation`);
  const empty = await read();
  const value = ({ parts }: EditionDocumentation, label: string) =>
    parts.flatMap(({ lines }) => lines).find((line) => line.label === label)?.value;
  expect(value(empty, 'Good'), 'no ledger is not 0 printed').toBeNull();
  expect(value(empty, 'Etches')).toBeNull();
  expect(value(empty, 'Numbered and signed')).toBeNull();
  await print(studio, edition.id, ['good', 'good', 'torn', 'second']);
  await studio.send('PUT', `/api/editions/${edition.id}/prints`, {
    version: 1,
    prints: [
      { impression: 'i1', kind: 'edition', number: 1 },
      { impression: 'i2', kind: 'artist', number: 1 },
      { impression: 'i3', kind: 'destroyed', number: null },
    ],
  });
  const plan = (
    await studio.send<KeptPlan>('POST', `/api/works/${edition.workId}/plans`, { tableId: 'tannic' })
  ).body;
  const run = (await studio.send<RunState>('POST', '/api/runs', { workId: edition.workId })).body;
  for (const kind of ['stage-started', 'stage-ended'])
    await studio.send('POST', `/api/runs/${run.id}/events`, {
      clientId: kind,
      kind,
      at,
      payload: { stage: 'first-etch' },
    });
  const full = await read();
  expect(value(full, 'Etches')).toMatch(/^first etch \(planned: gum alone, /);
  expect(value(full, 'Numbered and signed')).toBe('1 of 5');
  expect(value(full, 'Drawing materials')).toMatch(/^tusche in water, crayon #5/);
  expect(value(full, 'First print pulled')).toBe('4 Mar 2026');
  const sheet = await studio.call(`/api/editions/${edition.id}/documentation.pdf?paper=letter`);
  expect(sheet.headers.get('content-type')).toBe('application/pdf');
  expect(new TextDecoder().decode((await sheet.arrayBuffer()).slice(0, 5))).toBe('%PDF-');
  expect(full.open).toContain('1 print is neither given nor destroyed.');

  const kept = {
    edition: await studio.json<Edition>(`/api/editions/${edition.id}`),
    work: await studio.json<WorkEntry>(`/api/works/${edition.workId}`),
    ledger: ledgerState(
      (await studio.json<{ entries: LedgerEntry[] }>(`/api/editions/${edition.id}/ledger`)).entries,
      new Date(at),
    ),
  };
  const etched = await studio.json<RunState>(`/api/runs/${run.id}`);
  const follow = ({ record, id, field }: RecordedAt): unknown => {
    const into = (root: unknown) =>
      field.split('.').reduce((at, step) => (at as Record<string, unknown>)[step], root);
    switch (record) {
      case 'edition':
        expect(id).toBe(edition.id);
        return /On$/.test(field) ? isoDayWords(String(into(kept.edition))) : into(kept.edition);
      case 'work':
        expect(id).toBe(kept.work.id);
        return field.endsWith('.medium') ? mediumOf(String(into(kept.work)))?.name : into(kept.work);
      case 'stone':
        expect(id).toBe(kept.work.stone.id);
        return into(kept.work.stone);
      case 'plan':
        expect(id).toBe(plan.id);
        return into(plan);
      case 'run':
        expect(id).toBe(etched.id);
        return into(etched);
      case 'prints':
        return kept.edition.prints.filter(({ kind }) => `kind:${kind}` === field).length;
      case 'ledger':
        if (field === 'impressions') return kept.ledger.impressions.length;
        if (field === 'first') return isoDayWords(kept.ledger.impressions[0]!.at);
        if (field === 'last') return isoDayWords(kept.ledger.impressions.at(-1)!.at);
        return into(kept.ledger);
      default:
        return record satisfies never;
    }
  };
  let figures = 0;
  for (const line of [...empty.parts, ...full.parts].flatMap(({ lines }) => lines)) {
    if (line.value === null) {
      expect(line.from, line.label).toEqual([]);
      continue;
    }
    if (empty.parts.some(({ lines }) => lines.includes(line))) continue;
    let left = line.value;
    for (const one of line.from) {
      if (one.shown !== '') expect(String(follow(one)), `${line.label}: ${one.field}`).toBe(one.shown);
      else expect(follow(one)).toBeDefined();
      left = left.replace(one.shown, '');
    }
    expect(left, `${line.label} shows a figure that is kept nowhere`).not.toMatch(/\d/);
    if (/\d/.test(line.value)) figures++;
  }
  expect(figures).toBeGreaterThan(12);
});
