import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import type { SampleTestStone, SampleTestStonesToPlace } from '../../../application/placeTestStones.ts';
import type { ComparisonRecord } from '../../../records/comparison.ts';
import type { Corners } from '../../../science/geometry/point.ts';
import { keptFolder } from '../keptFolder.ts';
import { plannedTestStones } from './plannedTestStones.ts';

/** Where T-2's photographs and what was measured of them lie. */
export const testStoneFolder = (): string => join(keptFolder(), 'test-stone');

/** The record that measuring left is packed into this one file; pictures lie beside it. */
export const testStoneRecordName = 'comparison.json.gz';

/** T-2, read and answered, and T-3, planned, for a data folder that may have them already. */
export const sampleTestStones: SampleTestStonesToPlace = {
  afterId: 'saltreach-test-stone-1',
  readId: 'saltreach-test-stone-2',
  plannedId: 'saltreach-test-stone-3',
  async load() {
    const [second, planned] = plannedTestStones();
    const folder = testStoneFolder();
    const place = JSON.parse(await readFile(join(folder, 'place.json'), 'utf8')) as Record<
      'stone' | 'print',
      Corners
    >;
    const side = async (of: 'stone' | 'print') => ({
      fileName: `t-2-${of}.jpg`,
      bytes: await readFile(join(folder, `${of}.jpg`)),
      corners: place[of],
    });
    const read: SampleTestStone = {
      draft: second,
      stone: await side('stone'),
      print: await side('print'),
      printName: 'Third proof',
      measured: await keptMeasuring(folder),
    };
    return { read, planned };
  },
};

/** null while the readings themselves are made. */
async function keptMeasuring(folder: string): Promise<SampleTestStone['measured']> {
  const packed = join(folder, testStoneRecordName);
  if (!existsSync(packed)) return null;
  const record = JSON.parse(gunzipSync(await readFile(packed)).toString('utf8')) as ComparisonRecord;
  const pictures = join(folder, 'measured');
  const files = new Map<string, Uint8Array>();
  for (const name of (await readdir(pictures)).sort()) files.set(name, await readFile(join(pictures, name)));
  return { record, files };
}
