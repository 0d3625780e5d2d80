import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';

/** Judges a folder to be written before the work for it begins: what has its name already must be a folder. */
export async function checkFolder(folder: string): Promise<Result<null>> {
  const there = await stat(folder).catch(() => null);
  return there === null || there.isDirectory()
    ? ok(null)
    : fail(failure('output-unwritable', { folder, why: 'a file has that name' }));
}

/**
 * Writes files into a folder, made where it is missing. Each reaches its name only when it is whole: written beside it,
 * synced, renamed; then the folder is synced.
 * @param ours every name that the command may write: those not among `files` are left from an earlier run and go.
 */
export async function writeFolder(
  folder: string,
  files: ReadonlyMap<string, Uint8Array>,
  ours: readonly string[] = [],
): Promise<Result<null>> {
  const unfinished: string[] = [];
  try {
    await mkdir(folder, { recursive: true });
    for (const [name, bytes] of files) {
      const part = join(folder, `.${name}.part`);
      unfinished.push(part);
      const handle = await open(part, 'w');
      try {
        await handle.writeFile(bytes);
        await handle.sync();
      } finally {
        await handle.close();
      }
    }
    for (const name of files.keys()) await rename(join(folder, `.${name}.part`), join(folder, name));
    for (const name of ours) if (!files.has(name)) await rm(join(folder, name), { force: true });
    const handle = await open(folder, 'r');
    await handle.sync();
    await handle.close();
    return ok(null);
  } catch (error) {
    for (const part of unfinished) await rm(part, { force: true });
    return fail(
      failure('output-unwritable', { folder, why: error instanceof Error ? error.message : String(error) }),
    );
  }
}
