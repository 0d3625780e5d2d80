import { describe, expect, it } from 'vitest';
import type { BatchEntry } from '../../src/records/batch.ts';
import type { StoneEntry, StoneSummary } from '../../src/records/stoneEntry.ts';
import type { WorkEntry, WorkSummary } from '../../src/records/workEntry.ts';
import { type Refusal, type StudioUnderTest, studioUnderTest } from './studioUnderTest.ts';

type Page<Row> = { readonly next: string | null } & Readonly<Record<string, Row[]>>;

async function allPages<Row>(studio: StudioUnderTest, path: string, things: string): Promise<Row[][]> {
  const pages: Row[][] = [];
  for (let after: string | null = ''; after !== null; ) {
    const page: Page<Row> = await studio.json(`${path}${after ? `&after=${after}` : ''}`);
    pages.push(page[things]!);
    after = page.next;
  }
  return pages;
}

async function titles(studio: StudioUnderTest, query: string): Promise<string[]> {
  const { works } = await studio.json<{ works: WorkSummary[] }>(`/api/works?${query}`);
  return works.map(({ title }) => title);
}

async function names(studio: StudioUnderTest, query: string): Promise<string[]> {
  const { stones } = await studio.json<{ stones: StoneSummary[] }>(`/api/stones?${query}`);
  return stones.map(({ name }) => name);
}

describe('the list of stones', () => {
  it('goes by name with figures as numbers, page by page, and names the work changed last', async () => {
    const studio = await studioUnderTest();
    const stones = new Map<string, StoneEntry>();
    for (const name of ['S-10', 'T-1', 'S-2', 'S-1', 's-3']) stones.set(name, await studio.stone(name));
    await studio.work(stones.get('S-2')!.id, 'Low Water');
    await studio.work(stones.get('S-2')!.id, 'High Water');
    const pages = await allPages<StoneSummary>(studio, '/api/stones?limit=2', 'stones');
    expect(pages.map((page) => page.length)).toEqual([2, 2, 1]);
    expect(pages.flat().map(({ name }) => name)).toEqual(['S-1', 'S-2', 's-3', 'S-10', 'T-1']);
    expect(pages.flat().map(({ work }) => work?.title ?? null)).toEqual([
      null,
      'High Water',
      null,
      null,
      null,
    ]);
  });

  it('finds words of name, colour and note, whatever their case and accents', async () => {
    const studio = await studioUnderTest();
    await studio.stone('S-01', { colour: 'gris foncé' });
    await studio.stone('S-02', { note: 'Chipped at one corner, 100 %' });
    expect(await names(studio, 'search=fonce')).toEqual(['S-01']);
    expect(await names(studio, 'search=CORNER%20chipped')).toEqual(['S-02']);
    expect(await names(studio, 'search=%25')).toEqual(['S-02']);
    expect(await names(studio, 'search=corner%20fonce')).toEqual([]);
    expect(await names(studio, 'search=_')).toEqual([]);
  });
});

describe('the list of works', () => {
  it('goes by the last change; a save between two pages neither hides nor repeats the others', async () => {
    const studio = await studioUnderTest();
    const { id } = await studio.stone('S-01');
    const works: WorkEntry[] = [];
    for (const title of ['One', 'Two', 'Three', 'Four', 'Five']) works.push(await studio.work(id, title));
    const first = await studio.json<{ works: WorkSummary[]; next: string }>('/api/works?limit=2');
    expect(first.works.map(({ title }) => title)).toEqual(['Five', 'Four']);
    await studio.send('PATCH', `/api/works/${works[4]!.id}`, { version: 1, note: 'again' });
    expect(await titles(studio, `limit=2&after=${first.next}`)).toEqual(['Three', 'Two']);
    await studio.send('PATCH', `/api/works/${works[0]!.id}`, { version: 1, note: 'again' });
    expect(await titles(studio, 'limit=2')).toEqual(['One', 'Five']);
  });

  it('is narrowed by words of work, zones and stone, by stone and by stage', async () => {
    const studio = await studioUnderTest();
    const one = await studio.stone('S-01', { colour: 'yellow' });
    const two = await studio.stone('S-02');
    await studio.work(one.id, 'Low Water', { stage: 'drawn' });
    await studio.work(two.id, 'High Water', { zones: [] });
    await studio.work(two.id, 'Ebb', { zones: [], origin: { kind: 'halfway', stage: 'rolled-up' } });
    expect(await titles(studio, 'search=water')).toEqual(['High Water', 'Low Water']);
    expect(await titles(studio, 'search=mudbank')).toEqual(['Low Water']);
    expect(await titles(studio, 'search=yellow%20low')).toEqual(['Low Water']);
    expect(await titles(studio, `stone=${two.id}`)).toEqual(['Ebb', 'High Water']);
    expect(await titles(studio, `stone=${two.id}&stage=rolled-up`)).toEqual(['Ebb']);
    expect(await titles(studio, 'stage=edition')).toEqual([]);
  });

  it.each([
    ['/api/works?after=nowhere', 'after'],
    ['/api/stones?after=nowhere', 'after'],
    ['/api/batches?after=bnVsbA', 'after'],
    ['/api/works?limit=0', 'limit'],
    ['/api/works?limit=501', 'limit'],
    ['/api/works?limit=many', 'limit'],
    ['/api/works?stage=soaked', 'stage'],
    ['/api/works?putBy=maybe', 'putBy'],
    ['/api/batches?kind=water', 'kind'],
    [`/api/works?search=${'x'.repeat(201)}`, 'search'],
  ])('%s is refused with the field', async (path, field) => {
    const studio = await studioUnderTest();
    const { status, body } = await studio.send<Refusal>('GET', path);
    expect([status, body.code, body.path]).toEqual([400, 'body-malformed', field]);
  });
});

describe('putting by', () => {
  it('takes a work and then its stone off the lists, and brings both back whole', async () => {
    const studio = await studioUnderTest();
    const stone = await studio.stone('S-01');
    const work = await studio.work(stone.id, 'Low Water');
    const putBy = (path: string, version: number, putBy: boolean) =>
      studio.send<Refusal>('PUT', `/api/${path}/put-by`, { version, putBy });
    const refused = await putBy(`stones/${stone.id}`, 1, true);
    expect([refused.status, refused.body.code]).toEqual([409, 'stone-in-use']);
    expect(refused.body.message).toContain('Low Water');
    expect((await putBy(`works/${work.id}`, 1, true)).status).toBe(200);
    expect(await titles(studio, '')).toEqual([]);
    expect(await titles(studio, 'putBy=yes')).toEqual(['Low Water']);
    expect((await studio.json<StoneEntry>(`/api/stones/${stone.id}`)).works).toEqual([]);
    for (const [method, path, body] of [
      ['PATCH', '', { version: 2, note: 'no' }],
      ['PUT', '/zones.json', { version: 2, zones: [] }],
      ['POST', '/plans', {}],
      ['POST', '/second-etch', { line: 'full' }],
    ] as const) {
      const answer = await studio.send<Refusal>(method, `/api/works/${work.id}${path}`, body);
      expect([answer.status, answer.body.code], path).toEqual([409, 'put-by']);
    }
    expect((await putBy(`stones/${stone.id}`, 1, true)).status).toBe(200);
    expect(await names(studio, '')).toEqual([]);
    expect(await names(studio, 'putBy=all')).toEqual(['S-01']);
    const early = await putBy(`works/${work.id}`, 2, false);
    expect([early.status, early.body.code, early.body.path]).toEqual([409, 'put-by', 'stoneId']);
    const again = await studio.stone('S-01');
    const taken = await putBy(`stones/${stone.id}`, 2, false);
    expect([taken.status, taken.body.code]).toEqual([409, 'name-taken']);
    await putBy(`stones/${again.id}`, 1, true);
    expect((await putBy(`stones/${stone.id}`, 2, false)).status).toBe(200);
    expect((await putBy(`works/${work.id}`, 2, false)).status).toBe(200);
    const back = await studio.json<WorkEntry>(`/api/works/${work.id}`);
    expect(back).toMatchObject({ putBy: false, version: 3, zones: work.zones });
  });

  it('takes a batch off the list; plans may still name it', async () => {
    const studio = await studioUnderTest();
    const draft = { kind: 'tannic', name: 'May', gramsPerLitre: 50 };
    const { body: batch } = await studio.send<BatchEntry>('POST', '/api/batches', draft);
    await studio.send('POST', '/api/batches', { kind: 'base', name: 'Base, lot 7', opened: '2026-01-05' });
    await studio.send('PUT', `/api/batches/${batch.id}/put-by`, { version: 1, putBy: true });
    const list = await studio.json<{ batches: BatchEntry[] }>('/api/batches');
    expect(list.batches.map(({ name }) => name)).toEqual(['Base, lot 7']);
    const tannic = await studio.json<{ batches: BatchEntry[] }>('/api/batches?kind=tannic&putBy=all');
    expect(tannic.batches.map(({ name }) => name)).toEqual(['May']);
    const late = { version: 2, kind: 'tannic', pH: 3 };
    const refused = await studio.send<Refusal>('PATCH', `/api/batches/${batch.id}`, late);
    expect([refused.status, refused.body.code]).toEqual([409, 'put-by']);
    const stone = await studio.stone('S-01');
    const work = await studio.work(stone.id, 'Low Water');
    const plan = await studio.send('POST', `/api/works/${work.id}/plans`, { tannicBatchId: batch.id });
    expect(plan.status).toBe(201);
  });
});
