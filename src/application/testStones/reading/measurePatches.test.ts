import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import type { MeasuringStage } from '../../../records/comparisonEntry.ts';
import type { Zone } from '../../../records/zone.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import type { MeasureInput } from '../../comparison/measureInput.ts';
import { keptPartsIn } from './keptParts.ts';
import { measurePatches } from './measurePatches.ts';

const pictures = new URL('../../../../tests/cli/pictures/', import.meta.url);

async function keptPair(): Promise<MeasureInput> {
  const json = async (name: string) => JSON.parse(await readFile(new URL(name, pictures), 'utf8'));
  const { stoneCorners, proofCorners } = (await json('measured.json')) as Record<string, Corners>;
  const side = async (fileName: string, corners: Corners) => ({
    bytes: await readFile(new URL(fileName, pictures)),
    fileName,
    corners,
    repeat: null,
    flat: null,
  });
  return {
    stone: await side('measured-stone.jpg', stoneCorners!),
    proof: await side('measured-print.jpg', proofCorners!),
    sizeMm: [400, 300],
    zones: (await json('measured-zones.json')) as Zone[],
    chips: [],
    cornersInOrder: true,
  };
}

it('takes over what an earlier reading left, to the same result, and tells its steps', {
  timeout: 120_000,
}, async () => {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-patches-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const parts = keptPartsIn({ kept: join(folder, 'kept'), incoming: join(folder, 'incoming') });
  const input = await keptPair();
  const read = async () => {
    const stages: MeasuringStage[] = [];
    const progress = ({ stage }: { readonly stage: MeasuringStage }) => void stages.push(stage);
    const measured = await measurePatches(input, parts, { progress, stopped: () => false });
    if (!measured.ok) throw new Error(measured.error.message);
    return { ...measured.value, stages };
  };
  const first = await read();
  expect(first.record).toMatchObject({ verdict: 'ok', toneCurves: [], maps: null });
  expect(first.record.zones.every(({ drawn, printed }) => drawn !== null && printed !== null)).toBe(true);
  expect([...first.files.keys()]).toEqual(['comparison.json', 'stone.jpg', 'proof.jpg']);
  expect([...new Set(first.stages)]).toEqual(['reading', 'matching', 'tones', 'sheets']);
  expect(first.stages.filter((stage) => stage === 'matching').length).toBeGreaterThan(3);
  expect(await readdir(join(folder, 'kept'))).toHaveLength(2);
  const again = await read();
  expect(again.record).toEqual(first.record);
  expect([...again.files.values()].map((bytes) => bytes.length)).toEqual(
    [...first.files.values()].map((bytes) => bytes.length),
  );
  expect(again.stages, 'neither laid again nor read again').toEqual([
    'reading',
    'matching',
    'tones',
    'sheets',
    'sheets',
  ]);
});

it('stops when it is told to, without a result', async () => {
  const stopped = await measurePatches(await keptPair(), keptPartsIn(null), {
    progress: () => {},
    stopped: () => true,
  });
  expect(stopped).toMatchObject({ ok: false, error: { code: 'stopped' } });
});
