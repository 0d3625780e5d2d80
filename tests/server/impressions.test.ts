import { beforeAll, expect, it } from 'vitest';
import type { Edition } from '../../src/records/edition.ts';
import type { EditionReadings } from '../../src/records/editionReadings.ts';
import type { LedgerEntry } from '../../src/records/ledger.ts';
import type { PullChange, PullEntry } from '../../src/records/pullTones.ts';
import type { KeptSeriesSettings, WorkSeries } from '../../src/records/workSeries.ts';
import { encodePicture } from '../../src/sample/render/encodePicture.ts';
import { lowWater } from '../../src/sample/render/layouts/lowWater.ts';
import { type PairCase, plainCase } from '../../src/sample/render/pairCase.ts';
import { type PictureName, renderPair } from '../../src/sample/render/renderPair.ts';
import { studioUnderTest } from './studioUnderTest.ts';

const drawing = lowWater(1208);
const pair: PairCase = {
  ...plainCase('impression', 72, drawing),
  megapixels: 2,
  cellsPerMm: 4,
  repeats: true,
};
const shots = new Map<PictureName, { readonly bytes: Uint8Array; readonly corners: unknown }>();

beforeAll(async () => {
  const rendered = renderPair(pair);
  for (const name of ['stone', 'print', 'print-repeat'] as const) {
    const bytes = await encodePicture(rendered.take(name), pair.files);
    shots.set(name, { bytes, corners: rendered.cornersPx(name) });
  }
}, 240_000);

it('a photographed impression is read as a pull is, but is no proof of the series; taken back, it no longer counts', async () => {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-01', { widthMm: 450, heightMm: 340 });
  const keep = async (name: PictureName) => {
    const response = await studio.upload(`${name}.jpg`, shots.get(name)!.bytes);
    return ((await response.json()) as { id: string }).id;
  };
  const corners = { of: 'rectangle', px: shots.get('stone')!.corners };
  const outline = (x: number, y: number) => [
    [x, y],
    [x + 30, y],
    [x + 30, y + 30],
    [x, y + 30],
  ];
  const work = await studio.work(stone.id, 'Low Water', {
    zones: [],
    rectangle: { offsetMm: [25, 20], sizeMm: drawing.sizeMm },
    photographs: [{ photograph: await keep('stone'), state: 'drawn', corners }],
  });
  const path = `/api/works/${work.id}`;
  const [lights, middles, darks] = [outline(60, 60), outline(120, 120), outline(200, 150)].map((polygon) => ({
    zones: [],
    polygonsMm: [polygon],
  }));
  const areas = { lights, middles, darks };
  const set = await studio.send('PATCH', `${path}/series/measure`, { version: 0, areas });
  expect(set.status, JSON.stringify(set.body)).toBe(200);
  const approved = await studio.send<PullEntry>('POST', `${path}/pulls`, {
    number: 1,
    paper: { id: null, words: 'Creek rag' },
    damp: true,
    photographs: [{ photograph: await keep('print'), ageMinutes: 5 }],
  });
  expect(approved.status, JSON.stringify(approved.body)).toBe(201);
  const entered = await studio.send<Edition>('POST', `${path}/editions`, {
    title: 'Twelve Tides',
    size: 5,
    approvalPullId: approved.body.id,
    paper: { name: 'Creek rag', damped: 'yes' },
  });
  const edition = `/api/editions/${entered.body.id}`;
  const at = '2026-03-04T09:30:00+01:00';
  const log = async (body: object) => {
    const kept = await studio.send<LedgerEntry>('POST', `${edition}/ledger`, { at, ...body });
    expect(kept.status, JSON.stringify(kept.body)).toBe(201);
  };
  await log({ clientId: 'i1', kind: 'impression', payload: { verdict: 'torn' } });
  await log({ clientId: 'i2', kind: 'impression', payload: { verdict: 'good' } });
  const photograph = await keep('print-repeat');
  const shown = { impression: 'i2', photograph, takenAt: '2026-03-04T09:35:00+01:00' };
  await log({ clientId: 'p2', kind: 'photographed', payload: shown });
  await log({ clientId: 'p2', kind: 'photographed', payload: shown });

  const readings = () => studio.json<EditionReadings>(`${edition}/readings`);
  const states = async () => {
    const { approval, impressions } = await readings();
    const pulls = [approval!, ...impressions.map(({ pull }) => pull)];
    return pulls.flatMap(({ photographs }) => photographs.map(({ measuring }) => measuring!.state));
  };
  await expect.poll(states, { timeout: 120_000, interval: 300 }).toEqual(['measured', 'measured']);
  const { approval, impressions } = await readings();
  expect(impressions).toMatchObject([
    { impression: 'i2', n: 2, pull: { number: 2, photographs: [{ age: { minutes: 5 } }] } },
  ]);
  const read = (pull: PullEntry) => pull.photographs[0]!.measuring!.tones!.tones.darks!;
  const own = read(impressions[0]!.pull);
  expect(own.low).toBeLessThan(own.value);
  expect(Math.abs(own.value - read(approval!).value), 'the same print twice').toBeLessThan(0.02);

  const { pulls } = await studio.json<{ pulls: PullEntry[] }>(`${path}/pulls`);
  expect(pulls.map(({ id }) => id)).toEqual([approved.body.id]);
  const series = await studio.json<WorkSeries>(`${path}/series`);
  expect(series.pulls.map(({ number }) => number)).toEqual([1]);
  expect((await studio.json<KeptSeriesSettings>(`${path}/series/measure`)).reference).toMatchObject({
    pull: 1,
  });
  const beside = `${path}/pulls/${impressions[0]!.pull.id}/against/1`;
  expect(await studio.json<PullChange>(beside)).toMatchObject({ number: 1, measure: 'darkness' });

  await log({ clientId: 'u2', kind: 'undo', payload: { clientId: 'p2' } });
  expect((await readings()).impressions).toEqual([]);
}, 240_000);
