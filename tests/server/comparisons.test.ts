import { describe, expect, it } from 'vitest';
import { comparisonEntrySchema, comparisonListSchema } from '../../src/contract/comparisonEntry.ts';
import { postJson, serverUnderTest } from './serverUnderTest.ts';

interface List {
  comparisons: { id: string; title: string; state: string; finding: string | null }[];
  next: string | null;
}

describe('a comparison', () => {
  it('is set up, measured, listed and read, in the form that the contract says', async () => {
    const server = await serverUnderTest();
    const created = await server.comparison('stone.png');
    expect(created).toMatchObject({ title: 'Low Water, stone.png', record: null, files: [], sample: false });
    expect(created.request.stone).toMatchObject({ corners: null, repeat: null, flat: null });
    const measured = await server.until(created.id, 'measured');
    expect(measured.record?.verdict).toBe('ok');
    expect(measured.files).toEqual(['comparison.json', 'ladder.svg', 'stone.png']);
    expect(measured.finding).toBeTruthy();
    comparisonEntrySchema.parse(measured);
    const list = await server.json<List>('/api/comparisons');
    comparisonListSchema.parse(list);
    expect(list.comparisons).toMatchObject([{ id: created.id, state: 'measured' }]);
    expect(list.next).toBeNull();
  });

  it('that was refused keeps its record', async () => {
    const server = await serverUnderTest();
    const { id } = await server.comparison('turned.png');
    const refused = await server.until(id, 'refused');
    expect(refused.record?.verdict).toBe('unmirrored');
    expect(refused.finding).toContain('nothing was measured');
  });

  it('that failed says why, and so does one whose thread crashed', async () => {
    const server = await serverUnderTest();
    const failing = await server.comparison('fails.png');
    const crashing = await server.comparison('crash.png');
    expect((await server.until(failing.id, 'not-done')).failure).toMatchObject({ code: 'corners-not-found' });
    const crashed = await server.until(crashing.id, 'not-done');
    expect(crashed.failure).toMatchObject({
      code: 'measuring-crashed',
      message: expect.stringContaining('the heap is full'),
    });
  });

  it('is found by its words, whatever their case and accents, and page by page', async () => {
    const server = await serverUnderTest();
    const titles = ['Étude at ebb', 'Low Water', 'High water 100%'];
    for (const title of titles) await server.comparison('stone.png', { title });
    const search = async (words: string) =>
      (await server.json<List>(`/api/comparisons?search=${encodeURIComponent(words)}`)).comparisons.map(
        (entry) => entry.title,
      );
    expect(await search('etude')).toEqual(['Étude at ebb']);
    expect(await search('WATER low')).toEqual(['Low Water']);
    expect(await search('0%')).toEqual(['High water 100%']);
    expect(await search('_')).toEqual([]);
    const seen: string[] = [];
    for (let after: string | null = ''; after !== null; ) {
      const page: List = await server.json(`/api/comparisons?limit=2${after ? `&after=${after}` : ''}`);
      seen.push(...page.comparisons.map((entry) => entry.title));
      after = page.next;
    }
    expect(seen).toEqual(titles.toReversed());
    const lost = await server.call('/api/comparisons?after=nowhere');
    expect(lost.status).toBe(400);
  });

  it('once removed is gone from list and door, and can be asked for again under no name', async () => {
    const server = await serverUnderTest();
    const { id } = await server.comparison('stone.png');
    await server.until(id, 'measured');
    expect((await server.call(`/api/comparisons/${id}`, { method: 'DELETE' })).status).toBe(204);
    for (const [path, method] of [
      [`/api/comparisons/${id}`, 'GET'],
      [`/api/comparisons/${id}`, 'DELETE'],
      [`/api/comparisons/${id}/measuring`, 'POST'],
      [`/api/comparisons/${id}/measuring`, 'DELETE'],
      [`/api/comparisons/${id}/download`, 'GET'],
      [`/api/comparisons/${id}/files/ladder.svg`, 'GET'],
    ] as const) {
      expect((await server.call(path, { method })).status, `${method} ${path}`).toBe(404);
    }
    expect((await server.json<List>('/api/comparisons')).comparisons).toEqual([]);
  });
});

describe('a bad request', () => {
  it('names the field', async () => {
    const server = await serverUnderTest();
    const { request } = await server.comparison('stone.png');
    const square = [
      [10, 10],
      [60, 10],
      [60, 60],
      [10, 60],
    ];
    const zone = { id: 'z', name: 'Moon', medium: 'crayon', polygonMm: square };
    const corners = (points: number[][]) => ({ ...request, stone: { ...request.stone, corners: points } });
    for (const [body, code, path] of [
      [{ ...request, title: '  ' }, 'body-malformed', 'title'],
      [{ ...request, sizeMm: [300] }, 'body-malformed', 'sizeMm'],
      [{ ...request, sizeMm: [-1, 400] }, 'size-invalid', undefined],
      [{ ...request, stone: { photograph: 'x' } }, 'body-malformed', 'stone.photograph'],
      [{ ...request, proof: { photograph: 'a'.repeat(64) } }, 'photograph-unknown', 'proof.photograph'],
      [{ ...request, proof: request.stone }, 'photographs-same', 'proof.photograph'],
      [{ ...request, zones: [zone, { ...zone, id: 7 }] }, 'body-malformed', 'zones[1].id'],
      [{ ...request, zones: [{ ...zone, polygonMm: [[0, 'x']] }] }, 'body-malformed', 'zones[0].polygonMm'],
      [{ ...request, zones: [zone, zone] }, 'zone-duplicate', 'zones[1].id'],
      [{ ...request, chips: [{ photo: 'moon' }] }, 'body-malformed', 'chips[0].photo'],
      [corners([[5, 5]]), 'body-malformed', 'stone.corners'],
      [
        corners([
          [5, 5],
          [900, 5],
          [60, 40],
          [5, 40],
        ]),
        'corners-outside',
        'stone.corners[1]',
      ],
    ] as const) {
      const response = await server.call('/api/comparisons', postJson(body));
      const failure = (await response.json()) as { code: string; path?: string; stack?: string };
      expect.soft(failure.code, JSON.stringify(failure)).toBe(code);
      if (path !== undefined) expect.soft(failure.path ?? '', JSON.stringify(failure)).toContain(path);
      expect(response.status).toBeGreaterThanOrEqual(400);
      expect(response.status).toBeLessThan(500);
    }
  });

  it('that is no JSON, not JSON at all, or too long is refused with a sentence', async () => {
    const server = await serverUnderTest();
    const send = async (body: string, type = 'application/json') => {
      const headers = { 'content-type': type };
      const response = await server.call('/api/comparisons', { method: 'POST', headers, body });
      return [response.status, ((await response.json()) as { code: string }).code];
    };
    expect(await send('{"title":')).toEqual([400, 'body-malformed']);
    expect(await send('')).toEqual([400, 'body-malformed']);
    expect(await send('title=x', 'application/x-www-form-urlencoded')).toEqual([400, 'body-malformed']);
    expect(await send('[]')).toEqual([400, 'body-malformed']);
    expect(await send(`"${'x'.repeat(5e6)}"`)).toEqual([413, 'body-too-large']);
  });
});
