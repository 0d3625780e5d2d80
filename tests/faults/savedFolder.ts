import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { ok } from '../../src/foundation/result.ts';
import type { ComparisonRecord } from '../../src/records/comparison.ts';
import { openStore } from '../../src/store/openStore.ts';

/** Fills a data folder with two photographs and a result. Gives the photographs' places in it. */
export async function savedFolder(dataFolder: string): Promise<readonly string[]> {
  const opened = await openStore(dataFolder);
  if (!opened.ok) throw new Error(opened.error.message);
  const store = opened.value;
  const places: string[] = [];
  for (const shade of [1, 2]) {
    const bytes = Buffer.alloc(300_000 * shade + shade, shade);
    const id = createHash('sha256').update(bytes).digest('hex');
    const path = store.photographFiles.pathOf(id, 'jpeg');
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, bytes);
    places.push(relative(dataFolder, path));
    const photograph = {
      id,
      fileName: `stone ${shade}.jpg`,
      kind: 'jpeg' as const,
      widthPx: 40,
      heightPx: 30,
      byteCount: bytes.byteLength,
      addedAt: '2026-03-01T00:00:00.000Z',
    };
    await store.decide(async (records) => ok(await records.photographs.add(photograph)));
  }
  const files = new Map([['sheet.txt', Buffer.from('what was measured')]]);
  await store.resultFiles.keep('ab'.repeat(32), {} as ComparisonRecord, files);
  await store.close();
  return places;
}

/** Every file below a folder by its place in it, sorted. */
export async function filesBelow(folder: string): Promise<ReadonlyMap<string, Buffer>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const files = paths.sort().map(async (path) => [relative(folder, path), await readFile(path)] as const);
  return new Map(await Promise.all(files));
}
