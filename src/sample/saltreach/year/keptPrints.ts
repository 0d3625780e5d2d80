import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import type { ComparisonRecord } from '../../../records/comparison.ts';
import type { PullTones } from '../../../records/pullTones.ts';
import type { WorkZone } from '../../../records/work.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { keptFolder } from '../keptFolder.ts';

/** What place.json holds of a work's two photographs: where its rectangle lies on them. */
export interface KeptPlace {
  readonly stone: Corners;
  readonly print: Corners;
}

/** What measuring left of a work's two photographs. */
interface KeptMeasuring {
  /** Tones of the drawn zones, by id. */
  readonly tones: Readonly<Record<string, NonNullable<WorkZone['tone']>>>;
  readonly stone: PullTones;
  readonly print: PullTones;
  readonly comparison: ComparisonRecord;
  /** What else the comparison wrote, but for what is drawn from its record alone. */
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/** The photographs of a work of the year; `measured` null: they are measured where they are entered. */
export interface KeptPrint extends KeptPlace {
  readonly stoneBytes: Uint8Array;
  readonly printBytes: Uint8Array;
  readonly measured: KeptMeasuring | null;
}

/** Where a work's photographs and what was measured of them lie. */
export const keptPrintFolder = (workId: string): string => join(keptFolder(), 'year', workId);

/** What measuring left is packed into this one file; pictures lie beside it. */
export const readingsName = 'readings.json.gz';

/** A work's photographs with what was measured of them. Throws where the package's own files are missing. */
export async function loadKeptPrint(workId: string): Promise<KeptPrint> {
  const folder = keptPrintFolder(workId);
  const { stone, print } = JSON.parse(await readFile(join(folder, 'place.json'), 'utf8')) as KeptPlace;
  return {
    stone,
    print,
    stoneBytes: await readFile(join(folder, 'stone.jpg')),
    printBytes: await readFile(join(folder, 'print.jpg')),
    measured: await keptMeasuring(folder),
  };
}

/** What is packed into the one file. */
export type KeptReadings = Omit<KeptMeasuring, 'files'> & { readonly evidence: unknown };

async function keptMeasuring(folder: string): Promise<KeptMeasuring | null> {
  const packed = join(folder, readingsName);
  if (!existsSync(packed)) return null;
  const text = gunzipSync(await readFile(packed)).toString('utf8');
  const { evidence, ...readings } = JSON.parse(text) as KeptReadings;
  const files = new Map<string, Uint8Array>();
  const pictures = join(folder, 'measured');
  for (const name of (await readdir(pictures)).sort()) files.set(name, await readFile(join(pictures, name)));
  files.set('evidence.json', Buffer.from(`${JSON.stringify(evidence)}\n`));
  return { ...readings, files };
}
