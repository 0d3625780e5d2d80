import { readFileSync } from 'node:fs';
import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { comparisonFileNames } from '../../src/application/comparison/comparisonFileNames.ts';
import { decodePhotograph } from '../../src/imaging/codecs/decodePhotograph.ts';
import type { ComparisonRecord } from '../../src/records/comparison.ts';
import { aBench, type Bench, type Ended, pairWords, picture, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

const record = (folder: string) =>
  JSON.parse(readFileSync(join(folder, 'comparison.json'), 'utf8')) as ComparisonRecord;

const isNumber = (value: unknown) => typeof value === 'number' && Number.isFinite(value);

describe('a pair that can be measured', () => {
  let ended: Ended;
  let out: string;
  let found: ComparisonRecord;

  beforeAll(async () => {
    out = bench.path('measured/there already');
    const words = pairWords('measured', {
      zones: picture('measured-zones.json'),
      chips: picture('measured-chips.json'),
      out,
    });
    ended = await stonetone('compare', ...words);
    found = record(out);
  }, 120_000);

  it('ends with 0, says what was found and warns that the pixels are few, and of nothing else', () => {
    expect(ended.status, ended.complained).toBe(0);
    expect(ended.complained).toBe('');
    expect(ended.said).toMatch(/held/);
    expect(ended.said).toContain(`Written to ${out}.`);
    expect(new Set(found.warnings.map(({ code }) => code))).toEqual(new Set(['few-pixels']));
    for (const { code, message } of found.warnings) expect(ended.said).toContain(`${code}: ${message}`);
  });

  it('writes the record, the pictures, the charts and the sheet, and leaves nothing half-written', async () => {
    // sheet.png says where a sheet that missed part of the stone lay; this one covers it.
    const expected = comparisonFileNames.filter((name) => name !== 'sheet.png');
    expect((await readdir(out)).sort()).toEqual(expected.sort());
    expect(readFileSync(join(out, 'sheet.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    expect(readFileSync(join(out, 'curve.svg'), 'utf8')).toMatch(/^<svg /);
    expect(readFileSync(join(out, 'ladder.svg'), 'utf8')).toMatch(/^<svg /);
  });

  it('holds every field that others read', () => {
    expect(found.schema).toBe('stonetone/comparison/1');
    expect(found.engine).toMatch(/\S/);
    expect(found.parameters.sizeMm).toEqual([400, 300]);
    expect(found.verdict).toBe('ok');
    expect(found.registration!.kind).toMatch(/\S/);
    expect(isNumber(found.registration!.residualMm.median)).toBe(true);
    expect(isNumber(found.registration!.residualMm.p90)).toBe(true);
    for (const side of ['stone', 'proof'] as const) {
      expect(found.solid[side]!.origin).toMatch(/^(own-solid|chips|series|typed)$/);
      expect(isNumber(found.solid[side]!.darkness)).toBe(true);
      expect(found.strength[side]!.low).toBeLessThan(found.strength[side]!.high);
      expect(found.strength[side]!.basis).toBe('measured');
    }
    expect(found.zones.map(({ id }) => id)).toEqual(
      (JSON.parse(readFileSync(picture('measured-zones.json'), 'utf8')) as { id: string }[]).map(
        ({ id }) => id,
      ),
    );
    for (const zone of found.zones) {
      for (const reading of [zone.drawn!, zone.printed!]) {
        expect(reading.low).toBeLessThanOrEqual(reading.coverage);
        expect(reading.high).toBeGreaterThanOrEqual(reading.coverage);
      }
      expect(zone.change).toMatch(/^(held|lost|lighter|darker|filled|scum|undecided)$/);
    }
    for (const curve of found.toneCurves) {
      expect(curve.medium).toMatch(/\S/);
      expect(curve).toHaveProperty('lossPoint');
      expect(curve).toHaveProperty('fillPoint');
      for (const point of curve.points) {
        expect([point.drawn, point.printed, point.low, point.high].every(isNumber)).toBe(true);
      }
    }
  });

  it('samples a grid of at least 20 by 20 with the edges of the rectangle, on both photographs', () => {
    const { samples } = found.registration!;
    expect(samples.length).toBeGreaterThanOrEqual(400);
    for (const axis of [0, 1] as const) {
      const places = new Set(samples.map(({ stoneMm }) => stoneMm[axis]));
      expect(places.size).toBeGreaterThanOrEqual(20);
      expect(Math.min(...places)).toBe(0);
      expect(Math.max(...places)).toBe([400, 300][axis]);
    }
    for (const { stonePx, proofPx } of samples) expect([...stonePx, ...proofPx].every(isNumber)).toBe(true);
  });

  it('maps are 8-bit grey, exactly the work rectangle, 0 or 255, and add up to the fractions', async () => {
    const { pxPerMm } = found.maps!;
    for (const kind of ['lost', 'filled', 'scum'] as const) {
      const decoded = await decodePhotograph(readFileSync(join(out, found.maps![kind])), kind);
      if (!decoded.ok) throw new Error(decoded.error.message);
      const { widthPx, heightPx, channels, codes } = decoded.value;
      expect([widthPx, heightPx, channels]).toEqual([
        Math.round(400 * pxPerMm),
        Math.round(300 * pxPerMm),
        1,
      ]);
      expect([...new Set(codes)].filter((code) => code !== 0 && code !== 255)).toEqual([]);
      const yes = [...codes].filter((code) => code === 255).length;
      const share = yes / codes.length;
      // The sheet covers the whole rectangle, so that the share of the map is the stated fraction to its rounding.
      expect(Math.abs(share - found.areas[`${kind}Fraction`]!)).toBeLessThan(0.002);
    }
  });
});

describe('a pair that must be refused', () => {
  it.each([
    ['the print that reads as the stone does', 'unmirrored', {}, 'used before'],
    [
      'the print of another stone',
      'no-match',
      { proof: picture('measured-print.jpg'), 'proof-corners': null },
      'not there yet',
    ],
    [
      'a photograph of something else',
      'no-match',
      { proof: picture('../../published/data/decoder/grey-8bit.png'), 'proof-corners': null },
      'not there yet',
    ],
  ] as const)(
    '%s is named %s with 3; the record is written and holds nothing measured, and no earlier map or chart lies beside it',
    async (what, verdict, instead, folder) => {
      const out = bench.path(what);
      if (folder === 'used before') {
        // an earlier measurement goes, what is somebody's own stays
        await mkdir(out);
        for (const name of ['comparison.json', 'sheet.pdf', 'lost.png', 'curve.svg', 'overlay.png'])
          await writeFile(join(out, name), 'earlier');
        await writeFile(join(out, 'notes.txt'), 'mine');
      }
      const zones = picture('wrong-way-round-zones.json');
      const ended = await stonetone('compare', ...pairWords('wrong-way-round', { zones, ...instead, out }));
      expect(ended.status, ended.complained).toBe(3);
      const found = record(out);
      expect(found.verdict).toBe(verdict);
      expect(found.reason).toMatch(/\S/);
      expect(ended.said).toContain(found.reason!);
      expect(found.schema).toBe('stonetone/comparison/1');
      expect(found).toMatchObject({
        registration: null,
        solid: { stone: null, proof: null },
        strength: { stone: null, proof: null },
        zones: [],
        toneCurves: [],
        areas: { lostFraction: null, filledFraction: null, scumFraction: null },
        maps: null,
      });
      const own = folder === 'used before' ? ['notes.txt'] : [];
      expect((await readdir(out)).sort()).toEqual(['comparison.json', ...own, 'sheet.pdf']);
      expect(readFileSync(join(out, 'sheet.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    },
    120_000,
  );
});
