import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PatchFinding } from '../../src/records/patchReading.ts';
import type { TrialAnalysis } from '../../src/records/trial.ts';
import type { Zone } from '../../src/records/zone.ts';
import { aBench, type Bench, expectFailure, pairWords, picture, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

describe('stonetone trial read', () => {
  it('reads patches off photographs and writes a table that trial analyse takes', {
    timeout: 120_000,
  }, async () => {
    const zones = JSON.parse(readFileSync(picture('measured-zones.json'), 'utf8')) as Zone[];
    const patches = zones.map(({ id, medium, polygonMm }, index) => ({
      id,
      polygonMm,
      treatment: { medium, etch: index % 2 === 0 ? 'gum' : 'None' },
      strip: index < 4 ? 'A' : 'B',
    }));
    const list = await bench.write('patches.json', JSON.stringify({ name: 'T-1', patches }));
    const out = bench.path('reading');
    const words = pairWords('measured', { patches: list, out });
    const ended = await stonetone('trial', 'read', ...words);
    expect(ended.complained).toBe('');
    expect(ended.status).toBe(0);
    expect(ended.said).toContain(`${patches.length} patches: `);
    expect(ended.said).toContain('held');
    const { findings } = JSON.parse(readFileSync(join(out, 'reading.json'), 'utf8')) as {
      findings: PatchFinding[];
    };
    expect(findings.map(({ patch }) => patch)).toEqual(zones.map(({ id }) => id));
    const csv = join(out, 'patches.csv');
    const analysed = await stonetone(
      'trial',
      'analyse',
      '--csv',
      csv,
      '--response',
      'printed',
      '--sub',
      'etch',
    );
    expect(analysed.complained).toBe('');
    const { patches: counted, estimates } = JSON.parse(analysed.said) as TrialAnalysis;
    expect(counted).toBe(findings.filter(({ camera }) => camera.printed !== null).length);
    expect(estimates.map(({ level }) => level).sort()).toEqual(['None', 'gum']);
  });

  it('says what is wrong with a list of patches, and where', async () => {
    const refuse = async (list: object) => {
      const file = await bench.write('bad.json', JSON.stringify(list));
      return stonetone('trial', 'read', ...pairWords('measured', { patches: file, out: bench.path('none') }));
    };
    const malformed = 'patches-malformed';
    expectFailure(await refuse({}), malformed, /neither a grid nor a patch/);
    expectFailure(await refuse({ patches: [{ id: 'A1' }] }), malformed, /every patch needs its outline/);
    const grid = { rows: 2, columns: 2, originMm: [300, 10], squareMm: [90, 90], gutterMm: [5, 5] };
    expectFailure(await refuse({ grid }), 'zone-outside');
    const crowded = { ...grid, rows: 60, columns: 60, originMm: [5, 5], squareMm: [4, 3], gutterMm: [1, 1] };
    expectFailure(await refuse({ grid: crowded }), 'patches-too-many', /3600 patches/);
  });
});
