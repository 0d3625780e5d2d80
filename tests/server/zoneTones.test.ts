import { readFile } from 'node:fs/promises';
import { expect, it, vi } from 'vitest';
import { zoneTonesSchema } from '../../src/contract/zoneTones.ts';
import type { ComparisonRecord } from '../../src/records/comparison.ts';
import type { PhotographEntry } from '../../src/records/comparisonEntry.ts';
import type { KeptPlan } from '../../src/records/keptPlan.ts';
import type { WorkEntry } from '../../src/records/workEntry.ts';
import type { Zone } from '../../src/records/zone.ts';
import type { ZoneTones } from '../../src/records/zoneTones.ts';
import { applyHomography, homographyFromPoints } from '../../src/science/geometry/homography.ts';
import type { Corners, Point } from '../../src/science/geometry/point.ts';
import { type Refusal, rectangle, studioUnderTest } from './studioUnderTest.ts';

/** The demo pair was measured with grey chips, which a work doesn't have: its tones may differ by so much. */
const withoutChips = 0.04;
/** Three readings of a photograph, ms: about two seconds each where nothing else runs. */
vi.setConfig({ testTimeout: 180_000 });
const offsetMm: Point = [30, 25];

const kept = new URL('../../src/sample/saltreach/kept/', import.meta.url);
const request = JSON.parse(await readFile(new URL('request.json', kept), 'utf8')) as {
  sizeMm: Point;
  stone: { corners: Corners };
  zones: Zone[];
};
const record = JSON.parse(
  await readFile(new URL('measured/comparison.json', kept), 'utf8'),
) as ComparisonRecord;

async function drawnStone() {
  const studio = await studioUnderTest();
  const bytes = await readFile(new URL('low-water-stone.jpg', kept));
  const photograph = (await (await studio.upload('stone.jpg', bytes)).json()) as PhotographEntry;
  const stone = await studio.stone('S-01', { widthMm: 460, heightMm: 350 });
  const zones = request.zones.map((zone) => ({
    ...zone,
    polygonMm: zone.polygonMm.map(([x, y]) => [x + offsetMm[0], y + offsetMm[1]]),
  }));
  const corners = { of: 'rectangle', px: request.stone.corners };
  const work = await studio.work(stone.id, 'Low Water', {
    zones,
    rectangle: { offsetMm, sizeMm: request.sizeMm },
    photographs: [{ photograph: photograph.id, state: 'drawn', corners }],
  });
  return { studio, photograph, work };
}

function expectAsMeasured(tones: ZoneTones): void {
  zoneTonesSchema.parse(tones);
  for (const { zone, tone, why } of tones.zones) {
    const measured = record.zones.find(({ id }) => id === zone)!.drawn!.coverage;
    expect(why).toBeNull();
    expect(Math.abs(tone!.mean - measured), `${zone}: ${tone!.mean}, ${measured}`).toBeLessThan(withoutChips);
    expect(tone!.darkest).toBeGreaterThanOrEqual(tone!.mean);
    expect(tone!.basis).toBe('measured');
  }
}

it('reads tones as a comparison does, whichever corners are known, and a person may accept them', async () => {
  const { studio, photograph, work } = await drawnStone();
  const path = `/api/works/${work.id}/zone-tones`;
  const asAttached = await studio.send<ZoneTones>('POST', path, { photograph: photograph.id });
  expect(asAttached.status).toBe(200);
  expect(asAttached.body.zones.map(({ zone }) => zone)).toEqual(work.zones.map(({ id }) => id));
  expectAsMeasured(asAttached.body);

  const toPx = homographyFromPoints(rectangle(...offsetMm, ...request.sizeMm), request.stone.corners)!;
  const stoneCorners = rectangle(0, 0, 460, 350).map((corner) => applyHomography(toPx, corner));
  const byStone = await studio.send<ZoneTones>('POST', path, {
    photograph: photograph.id,
    cornersPx: stoneCorners,
    of: 'stone',
  });
  expectAsMeasured(byStone.body);

  const zones = work.zones.map((zone, index) => ({ ...zone, tone: asAttached.body.zones[index]!.tone }));
  const saved = await studio.send<WorkEntry>('PATCH', `/api/works/${work.id}`, { version: 1, zones });
  expect(saved.body.zones[0]!.tone).toEqual(asAttached.body.zones[0]!.tone);
});

it('splits a wash by its tone where a plan names the photograph, else plans by its light part', async () => {
  const { studio, photograph, work } = await drawnStone();
  const path = `/api/works/${work.id}`;
  const zones = work.zones.map((zone) => (zone.id === 'sky' ? { ...zone, medium: 'tusche-water' } : zone));
  await studio.send('PATCH', path, { version: 1, zones });
  const plan = async (choices: object) => {
    const { body } = await studio.send<KeptPlan>('POST', `${path}/plans`, choices);
    return body.plan.zones.find(({ id }) => id === 'sky')!;
  };
  const whole = await plan({});
  expect(whole).toMatchObject({ strength: 'light', parts: [] });
  expect(whole.why).toContain('spans deposits: planned by its light part');
  const split = await plan({ splitFrom: photograph.id });
  expect(split.parts.length).toBeGreaterThan(1);
  expect(split.parts.map(({ strength }) => strength)).toEqual(
    ['light', 'middle', 'dark'].slice(0, split.parts.length),
  );
  expect(split.why).toContain('split by measured tone into light');
  const area = split.parts.reduce((sum, part) => sum + part.areaCm2, 0);
  expect(area / whole.areaCm2).toBeCloseTo(1, 2);
});

it('refuses what it cannot read from', async () => {
  const { studio, photograph, work } = await drawnStone();
  const other = await studio.photograph('other.png', 7);
  const path = `/api/works/${work.id}`;
  const { id } = photograph;
  const swapped = [...request.stone.corners].reverse();
  const far = request.stone.corners.map(([x, y]) => [x + 5000, y]);
  for (const [route, body, status, code, field] of [
    ['zone-tones', { photograph: other.id }, 422, 'reference-unknown', 'photograph'],
    ['zone-tones', { photograph: 'mine' }, 400, 'body-malformed', 'photograph'],
    ['zone-tones', { photograph: id, cornersPx: far }, 422, 'corners-outside', 'cornersPx[0]'],
    ['zone-tones', { photograph: id, cornersPx: swapped }, 422, 'corners-anticlockwise', 'cornersPx'],
    ['plans', { splitFrom: other.id }, 422, 'reference-unknown', 'splitFrom'],
  ] as const) {
    const answer = await studio.send<Refusal>('POST', `${path}/${route}`, body);
    expect([answer.status, answer.body.code, answer.body.path]).toEqual([status, code, field]);
  }
  const bare = { version: 1, photographs: [{ photograph: id, state: 'drawn' }], rectangle: null };
  await studio.send('PATCH', path, bare);
  const cornerless = await studio.send<Refusal>('POST', `${path}/zone-tones`, { photograph: id });
  expect([cornerless.body.code, cornerless.body.path]).toEqual(['corners-malformed', 'cornersPx']);
  const noRectangle = { photograph: id, cornersPx: request.stone.corners, of: 'rectangle' };
  const refused = await studio.send<Refusal>('POST', `${path}/zone-tones`, noRectangle);
  expect([refused.body.code, refused.body.path]).toEqual(['body-malformed', 'of']);
});
