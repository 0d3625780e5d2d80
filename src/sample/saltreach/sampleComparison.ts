import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { MeasureInput } from '../../application/comparison/measureInput.ts';
import type { SampleComparison } from '../../application/placeSample.ts';
import type { ComparisonRecord } from '../../records/comparison.ts';
import type { Chip, Zone } from '../../records/zone.ts';
import type { Corners, Point } from '../../science/geometry/point.ts';
import { keptFolder } from './keptFolder.ts';

/** What request.json holds beside the two photographs. */
export interface KeptRequest {
  readonly title: string;
  readonly sizeMm: Point;
  readonly stone: { readonly fileName: string; readonly corners: Corners };
  readonly proof: { readonly fileName: string; readonly corners: Corners };
  readonly zones: readonly Zone[];
  readonly chips: readonly Chip[];
}

async function keptRequest(): Promise<KeptRequest> {
  return JSON.parse(await readFile(join(keptFolder(), 'request.json'), 'utf8')) as KeptRequest;
}

/** The demo pair with all that its measuring left, as kept. Throws where the package's own files are missing. */
export async function loadSampleComparison(): Promise<SampleComparison> {
  const request = await keptRequest();
  const measured = join(keptFolder(), 'measured');
  const files = new Map<string, Uint8Array>();
  for (const name of (await readdir(measured)).sort()) files.set(name, await readFile(join(measured, name)));
  const record = JSON.parse(await readFile(join(measured, 'comparison.json'), 'utf8')) as ComparisonRecord;
  const side = async ({ fileName, corners }: KeptRequest['stone']) => ({
    fileName,
    corners,
    bytes: await readFile(join(keptFolder(), fileName)),
  });
  return { ...request, stone: await side(request.stone), proof: await side(request.proof), record, files };
}

/** The demo pair as the engine is given it, to be measured afresh. */
export async function sampleMeasureInput(): Promise<MeasureInput> {
  const { stone, proof, sizeMm, zones, chips } = await keptRequest();
  const side = async ({ fileName, corners }: KeptRequest['stone']) => ({
    fileName,
    corners,
    bytes: await readFile(join(keptFolder(), fileName)),
    repeat: null,
    flat: null,
  });
  return { stone: await side(stone), proof: await side(proof), sizeMm, zones, chips };
}
