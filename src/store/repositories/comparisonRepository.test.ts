import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStore, type Store } from '../openStore.ts';
import type { StoredComparison } from './storedComparison.ts';

let folder: string;
let store: Store;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stonetone-repository-'));
  const opened = await openStore(folder);
  if (!opened.ok) throw new Error(opened.error.message);
  store = opened.value;
  for (const id of ['s', 'p']) {
    await store.photographs.add({
      id,
      fileName: `${id}.png`,
      kind: 'png',
      widthPx: 10,
      heightPx: 10,
      byteCount: 100,
      addedAt: '2026-01-01T00:00:00.000Z',
    });
  }
});

afterEach(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

function aComparison(id: string, more: Partial<StoredComparison> = {}): StoredComparison {
  const side = (photograph: string) => ({ photograph, corners: null, repeat: null, flat: null });
  const title = more.title ?? id;
  return {
    id,
    title,
    createdAt: '2026-01-01T00:00:00.000Z',
    state: 'waiting',
    sample: false,
    request: { title, sizeMm: [300, 400], stone: side('s'), proof: side('p'), zones: [], chips: [] },
    finding: null,
    failure: null,
    resultKey: null,
    queuedAt: '2026-01-01T00:00:00.000Z',
    interruptions: 0,
    ...more,
  };
}

describe('comparisons', () => {
  it('come back as they were put in, or moved', async () => {
    const put = aComparison('one', { sample: true });
    await store.comparisons.add(put);
    expect(await store.comparisons.find('one')).toEqual(put);
    const failure = { code: 'stopped', message: 'm', remedy: 'r', path: 'p' } as const;
    const change = { to: 'not-done', failure, queuedAt: '2026-01-02T00:00:00.000Z' } as const;
    expect(await store.comparisons.move('one', ['waiting'], change)).toBe(true);
    const { to, ...rest } = change;
    expect(await store.comparisons.find('one')).toEqual({ ...put, ...rest, state: to });
  });

  it('move only out of the states that were named', async () => {
    await store.comparisons.add(aComparison('one'));
    expect(await store.comparisons.move('one', ['measuring'], { to: 'measured' })).toBe(false);
    expect(await store.comparisons.move('none', ['waiting'], { to: 'measured' })).toBe(false);
    expect((await store.comparisons.find('one'))?.state).toBe('waiting');
  });

  it('wait in the order in which they were asked for', async () => {
    await store.comparisons.add(aComparison('late', { queuedAt: '2026-01-03T00:00:00.000Z' }));
    await store.comparisons.add(aComparison('early', { queuedAt: '2026-01-02T00:00:00.000Z' }));
    expect((await store.comparisons.nextWaiting())?.id).toBe('early');
    await store.comparisons.move('early', ['waiting'], { to: 'measuring' });
    expect((await store.comparisons.nextWaiting())?.id).toBe('late');
    expect((await store.comparisons.measuring()).map(({ id }) => id)).toEqual(['early']);
    await store.comparisons.putBy('late', '2026-01-04T00:00:00.000Z');
    expect(await store.comparisons.nextWaiting()).toBeNull();
  });

  it('of one moment are paged without a gap, also past a mark that was put by', async () => {
    const ids = ['a', 'b', 'c', 'd', 'e'];
    for (const id of ids) await store.comparisons.add(aComparison(id));
    const first = await store.comparisons.list({ search: '', after: null, limit: 2 });
    expect(first?.comparisons.map(({ id }) => id)).toEqual(['e', 'd']);
    await store.comparisons.putBy('d', '2026-01-04T00:00:00.000Z');
    const rest = await store.comparisons.list({ search: '', after: first!.next, limit: 3 });
    expect(rest?.comparisons.map(({ id }) => id)).toEqual(['c', 'b', 'a']);
    expect(rest?.next).toBeNull();
  });

  it('of a photograph that is not there are refused, and nothing of them stays', async () => {
    const orphan = aComparison('one');
    const request = { ...orphan.request, stone: { ...orphan.request.stone, repeat: 'nowhere' } };
    await expect(store.comparisons.add({ ...orphan, request })).rejects.toThrow('FOREIGN KEY');
    expect(await store.comparisons.find('one')).toBeNull();
  });
});

describe('result files', () => {
  it('are kept whole and once', async () => {
    const key = 'a'.repeat(64);
    const record = { schema: 'stonetone/comparison/1', engine: 'one' } as never;
    await store.resultFiles.keep(key, record, new Map([['map.png', Buffer.from('1')]]));
    await store.resultFiles.keep(key, record, new Map([['other.png', Buffer.from('2')]]));
    expect(await store.resultFiles.names(key)).toEqual(['comparison.json', 'map.png']);
    expect(await store.resultFiles.record(key)).toEqual(record);
    expect(await store.resultFiles.pathOf(key, '../x')).toBeNull();
    expect(await store.resultFiles.names('b'.repeat(64))).toEqual([]);
    expect(() => store.photographFiles.pathOf('../../etc', 'png')).toThrow('content hash');
  });
});
