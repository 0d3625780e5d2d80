import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStore, type Store } from './openStore.ts';

let folder: string;
const open: Store[] = [];

async function opened(): Promise<Store> {
  const store = await openStore(folder);
  if (!store.ok) throw new Error(store.error.message);
  open.push(store.value);
  return store.value;
}

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stonetone-store-'));
});

afterEach(async () => {
  for (const store of open.splice(0)) await store.close();
  await rm(folder, { recursive: true, force: true });
});

describe('openStore', () => {
  it('makes the folder with everything in it', async () => {
    folder = join(folder, 'made', 'deeper');
    await opened();
    expect(await readdir(folder)).toEqual(
      expect.arrayContaining(['cache', 'incoming', 'photographs', 'results', 'stonetone.sqlite']),
    );
  });

  it('is for one at a time, and free again once closed', async () => {
    const first = await opened();
    const second = await openStore(folder);
    expect(second).toMatchObject({ ok: false, error: { code: 'data-folder-busy' } });
    open.splice(open.indexOf(first), 1);
    await first.close();
    await opened();
  });

  it('sweeps away what was left half-made', async () => {
    const store = await opened();
    await writeFile(join(store.folder.incoming, 'half.tmp'), 'half');
    await open.pop()!.close();
    await opened();
    expect(await readdir(store.folder.incoming)).toEqual([]);
  });

  it('says so when the database is no database, and leaves it as it is', async () => {
    await writeFile(join(folder, 'stonetone.sqlite'), 'certainly no database '.repeat(100));
    const store = await openStore(folder);
    expect(store).toMatchObject({ ok: false, error: { code: 'database-damaged' } });
    // the lock was given back with the refusal
    await rm(join(folder, 'stonetone.sqlite'));
    await opened();
  });

  it('says so when the place is a file', async () => {
    const file = join(folder, 'taken');
    await writeFile(file, '');
    folder = file;
    expect(await openStore(file)).toMatchObject({ ok: false, error: { code: 'data-folder-unusable' } });
  });
});
