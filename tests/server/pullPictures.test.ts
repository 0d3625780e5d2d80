import { beforeAll, describe, expect, it } from 'vitest';
import type { PullChange, PullEntry } from '../../src/records/pullTones.ts';
import type { KeptSeriesSettings, RoomNoise, WorkSeries } from '../../src/records/workSeries.ts';
import { encodePicture } from '../../src/sample/render/encodePicture.ts';
import { lowWater } from '../../src/sample/render/layouts/lowWater.ts';
import { type PairCase, plainCase } from '../../src/sample/render/pairCase.ts';
import { noDamage } from '../../src/sample/render/printing.ts';
import { type PictureName, renderPair } from '../../src/sample/render/renderPair.ts';
import { type Refusal, studioUnderTest } from './studioUnderTest.ts';

const drawing = lowWater(1207);
const base: PairCase = {
  ...plainCase('pull', 71, drawing),
  megapixels: 2,
  cellsPerMm: 4,
  repeats: true,
  chips: true,
};
const scum = { ...noDamage, uniformScum: 0.08 };

interface Shot {
  readonly bytes: Uint8Array;
  readonly corners: unknown;
  readonly chips: readonly object[];
}

const shots = new Map<string, Shot>();

async function take(pair: PairCase, named: Readonly<Partial<Record<PictureName, string>>>): Promise<void> {
  const rendered = renderPair(pair);
  const chips = rendered.chips.filter(({ photo }) => photo === 'proof').map(({ photo: _, ...chip }) => chip);
  for (const [name, as] of Object.entries(named) as [PictureName, string][]) {
    const bytes = await encodePicture(rendered.take(name), pair.files);
    // chips are outlined on the first photograph of a sheet alone
    shots.set(as, { bytes, corners: rendered.cornersPx(name), chips: name === 'print' ? chips : [] });
  }
}

beforeAll(async () => {
  await take(base, { stone: 'stone', print: 'first', 'print-repeat': 'first again' });
  const grown = { ...base.transfer, gain: 0.25 };
  await take({ ...base, transfer: grown }, { print: 'grown' });
  await take({ ...base, damage: scum }, { print: 'scummed' });
  await take({ ...base, damage: scum, sheetMarginsMm: [0, 0, 0, 0] }, { print: 'cropped' });
}, 240_000);

async function deskUnderTest() {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-01', { widthMm: 450, heightMm: 340 });
  const photograph = async (name: string) => {
    const { bytes, corners, chips } = shots.get(name)!;
    const response = await studio.upload(`${name}.jpg`, bytes);
    return { photograph: ((await response.json()) as { id: string }).id, corners, chips };
  };
  const drawn = await photograph('stone');
  const work = await studio.work(stone.id, 'Low Water', {
    zones: [],
    rectangle: { offsetMm: [25, 20], sizeMm: drawing.sizeMm },
    photographs: [
      {
        photograph: drawn.photograph,
        state: 'drawn',
        corners: { of: 'rectangle', px: drawn.corners },
      },
    ],
  });
  const path = `/api/works/${work.id}`;
  await studio.send('PUT', `${path}/zones.json`, { version: 1, zones: drawing.zones });
  async function pull(number: number, names: readonly string[]): Promise<PullEntry> {
    const photographs = [];
    for (const name of names) {
      const { photograph: id, chips: seen } = await photograph(name);
      photographs.push({ photograph: id, ageMinutes: 5, chips: seen });
    }
    const draft = { number, paper: { words: 'rag 250' }, damp: false, photographs };
    const made = await studio.send<PullEntry>('POST', `${path}/pulls`, draft);
    for (;;) {
      const { body } = await studio.send<PullEntry>('GET', `${path}/pulls/${made.body.id}`);
      if (body.photographs.every(({ measuring }) => /ed$/.test(measuring!.state))) return body;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }
  const against = async (of: PullEntry, partner: string) =>
    (await studio.send<PullChange>('GET', `${path}/pulls/${of.id}/against/${partner}`)).body;
  return { ...studio, path, pull, against };
}

describe('photographed pulls', () => {
  it('are read against their own paper, compared with stone and pulls, and tell σ of the room', async () => {
    const desk = await deskUnderTest();
    const one = await desk.pull(1, ['first', 'first again']);
    const [tones] = one.photographs.map(({ measuring }) => measuring!.tones!);
    expect(one.photographs.map(({ measuring }) => measuring!.state)).toEqual(['measured', 'measured']);
    expect(tones!.tones.darks!.value).toBeGreaterThan(tones!.tones.middles!.value);
    expect(tones!.bare.darkness!.value).toBeCloseTo(0, 1);

    const { body: noise } = await desk.send<RoomNoise>('GET', '/api/noise');
    expect(noise).toMatchObject({ origin: 'repeats', sheets: 1, sigma: { basis: 'this room' } });
    expect(noise.sigma!.value).toBeLessThan(0.01);

    const { body: settled } = await desk.send<KeptSeriesSettings>('GET', `${desk.path}/series/settings`);
    expect(settled.reference).toMatchObject({ pull: 1 });
    expect(settled.version).toBe(1);

    const two = await desk.pull(2, ['grown']);
    const last = await desk.against(two, 'last');
    expect(last).toMatchObject({ partner: 'last', number: 1, measure: 'darkness' });
    expect(last.tones.middles).toMatchObject({ change: 'darker' });
    expect(last.maps!.darkerFraction).toBeGreaterThan(last.maps!.lighterFraction);
    const map = await desk.call(`${desk.path}/pulls/${two.id}/against/last/files/${last.maps!.darker}`);
    expect([map.status, map.headers.get('content-type')]).toEqual([200, 'image/png']);

    const drawn = await desk.against(two, 'drawn');
    expect(drawn).toMatchObject({ partner: 'drawn', number: null, measure: 'coverage' });
    expect(drawn.zones.find(({ id }) => id === 'post')!.change).toBe('held');

    const inked = await desk.send<Refusal>('GET', `${desk.path}/pulls/${two.id}/against/inked`);
    expect(inked.body).toMatchObject({ code: 'stone-photograph-missing' });
    const bare = await desk.pull(3, ['first again']);
    const same = await desk.against(bare, '1');
    expect([...Object.values(same.tones), ...same.zones].map(({ change }) => change)).not.toContain('held');
    expect(same.warnings.join(' ')).toContain('nothing is said to have held');

    const { body: series } = await desk.send<WorkSeries>('GET', `${desk.path}/series`);
    expect(series.pulls.map(({ how, readings }) => [how, readings])).toEqual([
      ['camera', 2],
      ['camera', 1],
      ['camera', 1],
    ]);
    expect(series.readAgain).toMatchObject({ pull: 3 });
  }, 240_000);

  it('with an even scum tell it against clean paper, and can’t where the paper is cropped', async () => {
    const desk = await deskUnderTest();
    const one = await desk.pull(1, ['scummed']);
    const { bare } = one.photographs[0]!.measuring!.tones!;
    expect(Math.abs(bare.darkness!.value - 0.08)).toBeLessThanOrEqual(0.02);
    expect(bare.darkness!.low).toBeLessThan(0.08);
    expect(bare.darkness!.high).toBeGreaterThan(0.08);
    const two = await desk.pull(2, ['cropped']);
    const seen = two.photographs[0]!.measuring!.tones!.bare;
    expect(seen.darkness).toBeNull();
    expect(seen.why).toContain('Can’t tell');
  }, 240_000);
});
