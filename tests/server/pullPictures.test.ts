import { beforeAll, expect, it } from 'vitest';
import type { PullChange, PullEntry } from '../../src/records/pullTones.ts';
import type { KeptSeriesSettings, RoomNoise, WorkSeries } from '../../src/records/workSeries.ts';
import { encodePicture } from '../../src/sample/render/encodePicture.ts';
import { lowWater } from '../../src/sample/render/layouts/lowWater.ts';
import { type PairCase, plainCase } from '../../src/sample/render/pairCase.ts';
import { noDamage } from '../../src/sample/render/printing.ts';
import { type PictureName, renderPair } from '../../src/sample/render/renderPair.ts';
import { reducedDrawing } from './reducedDrawing.ts';
import { type Refusal, studioUnderTest } from './studioUnderTest.ts';

// two fifths as wide, with as many px to the mm as four megapixels give the whole: quickly rendered and read
const drawing = reducedDrawing(lowWater(1207), 0.4);
/** Ink as a factor of the renderer's: films of 1.4 D and 1.0 D above the sheet. */
const film = { strong: 0.955, weak: 2.4 };
const base: PairCase = {
  ...plainCase('pull', 71, drawing),
  megapixels: 1.2,
  cellsPerMm: 4,
  repeats: true,
  chips: true,
  inkReflectance: { stone: 1, print: film.strong },
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

async function deskUnderTest() {
  const studio = await studioUnderTest();
  const stone = await studio.stone('S-01', { widthMm: 450, heightMm: 340 });
  const kept = new Map<string, string>();
  async function photograph(name: string) {
    const { bytes, corners, chips } = shots.get(name)!;
    if (!kept.has(name)) {
      const response = await studio.upload(`${name}.jpg`, bytes);
      kept.set(name, ((await response.json()) as { id: string }).id);
    }
    return { id: kept.get(name)!, corners, chips };
  }
  async function work(title: string, states: Readonly<Record<string, string>>): Promise<string> {
    const photographs = [];
    for (const [state, name] of Object.entries(states)) {
      const { id, corners } = await photograph(name);
      photographs.push({ photograph: id, state, corners: { of: 'rectangle', px: corners } });
    }
    const rectangle = { offsetMm: [25, 20], sizeMm: drawing.sizeMm };
    const { id } = await studio.work(stone.id, title, { zones: [], rectangle, photographs });
    await studio.send('PUT', `/api/works/${id}/zones.json`, { version: 1, zones: drawing.zones });
    return `/api/works/${id}`;
  }
  async function pull(path: string, number: number, names: readonly string[]) {
    const photographs = [];
    for (const name of names) {
      const shot = await photograph(name);
      photographs.push({ photograph: shot.id, ageMinutes: 5, chips: shot.chips });
    }
    const draft = { number, paper: { words: 'rag 250' }, damp: false, photographs };
    const made = await studio.send<PullEntry>('POST', `${path}/pulls`, draft);
    for (;;) {
      const { body } = await studio.send<PullEntry>('GET', `${path}/pulls/${made.body.id}`);
      if (body.photographs.every(({ measuring }) => /ed$/.test(measuring!.state))) return body;
      await new Promise((resolve) => setTimeout(resolve, 500));
    }
  }
  const path = await work('Low Water', { drawn: 'stone', inked: 'inked' });
  const against = async (of: PullEntry, partner: string) =>
    (await studio.send<PullChange>('GET', `${path}/pulls/${of.id}/against/${partner}`)).body;
  return { ...studio, path, work, pull, against };
}

type Desk = Awaited<ReturnType<typeof deskUnderTest>>;

beforeAll(async () => {
  await take(base, { stone: 'stone', print: 'first', 'print-repeat': 'first again' });
  const grown = { ...base.transfer, gain: 0.25 };
  await take({ ...base, transfer: grown }, { print: 'grown' });
  await take({ ...base, inkReflectance: { stone: 1, print: film.weak } }, { print: 'weak' });
  // rolled up and fanned dry: the film is blacker than the drawing was
  await take({ ...base, inkReflectance: { stone: 0.7, print: 1 } }, { 'stone-repeat': 'inked' });
  await take({ ...base, damage: scum }, { print: 'scummed' });
  await take({ ...base, damage: scum, sheetMarginsMm: [0, 0, 0, 0] }, { print: 'cropped' });
}, 600_000);

const changesOf = ({ tones, zones }: PullChange) =>
  [...Object.values(tones), ...zones].map(({ change }) => change);

/** Pulls are read against their own paper, compared with stone and pulls, and tell σ of the room. */
async function ownPaper(desk: Desk, one: PullEntry): Promise<void> {
  const [tones] = one.photographs.map(({ measuring }) => measuring!.tones!);
  expect(one.photographs.map(({ measuring }) => measuring!.state)).toEqual(['measured', 'measured']);
  expect(tones!.tones.darks!.value).toBeGreaterThan(tones!.tones.middles!.value);
  expect(tones!.bare.darkness!.value).toBeCloseTo(0, 1);

  const { body: noise } = await desk.send<RoomNoise>('GET', '/api/noise');
  expect(noise).toMatchObject({ origin: 'repeats', sheets: 1, sigma: { basis: 'this room' } });
  expect(noise.sigma!.value).toBeLessThan(0.01);

  const { body: settled } = await desk.send<KeptSeriesSettings>('GET', `${desk.path}/series/measure`);
  expect(settled.reference).toMatchObject({ pull: 1 });
  expect(settled.version).toBe(1);

  const two = await desk.pull(desk.path, 2, ['grown']);
  const last = await desk.against(two, 'last');
  expect(last).toMatchObject({ partner: 'last', number: 1, measure: 'darkness' });
  expect(last.tones.middles).toMatchObject({ change: 'darker' });
  expect(last.maps!.darkerFraction).toBeGreaterThan(last.maps!.lighterFraction);
  const map = await desk.call(`${desk.path}/pulls/${two.id}/against/last/files/${last.maps!.darker}`);
  expect([map.status, map.headers.get('content-type')]).toEqual([200, 'image/png']);

  const drawn = await desk.against(two, 'drawn');
  expect(drawn).toMatchObject({ partner: 'drawn', number: null, measure: 'coverage' });
  expect(drawn.zones.find(({ id }) => id === 'post')!.change).toBe('held');

  const bare = await desk.pull(desk.path, 3, ['first again']);
  const same = await desk.against(bare, '1');
  expect(changesOf(same)).not.toContain('held');
  expect(same.warnings.join(' ')).toContain('nothing is said to have held');

  const { body: series } = await desk.send<WorkSeries>('GET', `${desk.path}/series`);
  expect(series.pulls.map(({ how, readings }) => [how, readings])).toEqual([
    ['camera', 2],
    ['camera', 1],
    ['camera', 1],
  ]);
  expect(series.readAgain).toMatchObject({ pull: 3 });
}

/** Pulls show weak ink where chips tell how dark the solid is, and without chips say of nothing that it held. */
async function weakInk(desk: Desk): Promise<void> {
  const weak = await desk.pull(desk.path, 4, ['weak']);
  const seen = await desk.against(weak, '1');
  expect(seen.strength.partner!.value).toBeCloseTo(1.4, 1);
  expect(seen.strength.pull!.value).toBeCloseTo(1, 1);
  expect(seen.sentences.join(' ')).toContain('The solid is 0.4 D light');
  expect(seen.tones.darks.difference!.high).toBeLessThan(0);
  // the third pull has no chips
  const untold = await desk.against(weak, '3');
  expect(changesOf(untold)).not.toContain('held');
  expect(untold.sentences.join(' ')).not.toMatch(/held|solid is/);
  expect(untold.warnings.join(' ')).toContain('nothing is said to have held');
}

/** Pulls are compared with the inked stone, fanned dry, as with the drawn one; without its photograph that is said. */
async function inkedStone(desk: Desk, one: PullEntry): Promise<void> {
  const inked = await desk.against(one, 'inked');
  expect(inked).toMatchObject({ partner: 'inked', number: null, measure: 'coverage' });
  const drawn = await desk.against(one, 'drawn');
  expect(inked.zones.find(({ id }) => id === 'post')!.change).toBe('held');
  for (const zone of inked.zones) {
    const same = drawn.zones.find(({ id }) => id === zone.id)!;
    expect(Math.abs(zone.partner!.value - same.partner!.value), zone.name).toBeLessThan(0.03);
    expect(zone.change, zone.name).not.toMatch(/lost|filled|lighter|scum/);
  }
  const map = await desk.call(`${desk.path}/pulls/${one.id}/against/inked/files/${inked.maps!.lighter}`);
  expect(map.status).toBe(200);
  expect(inked.maps!.lighterFraction).toBeLessThan(0.001);

  const other = await desk.work('Low Water, drawn', { drawn: 'stone' });
  const { id } = await desk.pull(other, 1, ['first']);
  const missing = await desk.send<Refusal>('GET', `${other}/pulls/${id}/against/inked`);
  expect(missing.body).toMatchObject({ code: 'stone-photograph-missing' });
}

/** Pulls with an even scum tell it against clean paper, and can’t where the paper is cropped. */
async function evenScum(desk: Desk): Promise<void> {
  const six = await desk.pull(desk.path, 6, ['scummed']);
  const { bare } = six.photographs[0]!.measuring!.tones!;
  expect(Math.abs(bare.darkness!.value - 0.08)).toBeLessThanOrEqual(0.02);
  expect(bare.darkness!.low).toBeLessThan(0.08);
  expect(bare.darkness!.high).toBeGreaterThan(0.08);
  expect((bare.darkness!.high - bare.darkness!.low) / 2).toBeLessThanOrEqual(0.02);
  const seven = await desk.pull(desk.path, 7, ['cropped']);
  const seen = seven.photographs[0]!.measuring!.tones!.bare;
  expect(seen.darkness).toBeNull();
  expect(seen.why).toContain('Can’t tell');
}

// the steps share one desk: a photograph is read once
it('photographed pulls are read and compared', async () => {
  const desk = await deskUnderTest();
  const one = await desk.pull(desk.path, 1, ['first', 'first again']);
  await ownPaper(desk, one);
  await weakInk(desk);
  await inkedStone(desk, one);
  await evenScum(desk);
}, 600_000);
