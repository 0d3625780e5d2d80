import { expect, it } from 'vitest';
import type { StoneBook } from '../../src/records/stoneBook.ts';
import { recordReader } from './followFigures.ts';
import { lowWaterPrinted } from './lowWaterPrinted.ts';
import { studioUnderTest } from './studioUnderTest.ts';

const isPdf = async (response: Response) =>
  new TextDecoder().decode((await response.arrayBuffer()).slice(0, 5)) === '%PDF-';

it('a stone’s book tells its life in order, each entry from a record that is there', async () => {
  const studio = await studioUnderTest();
  const { work, stone } = await lowWaterPrinted(studio);
  await studio.work(stone.id, 'Ebb');
  const book = await studio.json<StoneBook>(`/api/stones/${stone.id}/book`);
  expect(book.chapters.map(({ name }) => name)).toEqual(['The stone S-01', 'Low Water', 'Ebb']);
  const entries = book.chapters[1]!.entries;
  const times = entries.map(({ at }) => (at === null ? 0 : Date.parse(at)));
  expect(times).toEqual(times.toSorted((one, other) => one - other));
  const told = entries.map(({ what }) => what);
  expect(told).toContain('first etch');
  expect(told).toContain('pull 2, proof, on rag 250');
  expect(entries.find(({ what }) => what === 'roll up')!.more).toMatch(/remembered/);
  expect(book.chapters[1]!.notRecorded).toContain('washout time on S-01');
  const follow = recordReader(studio, () => work.id);
  for (const { from, what } of entries)
    expect(await follow(from), `${what}: ${from.record} ${from.field}`).not.toBeUndefined();
  expect(await isPdf(await studio.call(`/api/stones/${stone.id}/book.pdf`))).toBe(true);
  expect(await isPdf(await studio.call(`/api/works/${work.id}/book.pdf`))).toBe(true);
  expect((await studio.call('/api/stones/none/book.pdf')).status).toBe(404);
});

it('labels are set for stones and batches, and refused for what is not kept here', async () => {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-01');
  const batch = await studio.send<{ id: string }>('POST', '/api/batches', { kind: 'gum', name: 'Gum, May' });
  const sheet = await studio.call(`/api/labels.pdf?stones=${stone.id}&batches=${batch.body.id}&paper=letter`);
  expect(await isPdf(sheet)).toBe(true);
  const unknown = await studio.send('GET', '/api/labels.pdf?stones=none');
  expect(unknown).toMatchObject({ status: 422, body: { code: 'reference-unknown', path: 'stones' } });
});
