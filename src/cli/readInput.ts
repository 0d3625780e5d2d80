import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import type { PhotographFile } from '../application/comparison/measureInput.ts';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';

/** Reads a file whole; a missing one, and one that can't be read, is a failure with its name. */
async function readInput(file: string): Promise<Result<Uint8Array>> {
  try {
    return ok(await readFile(file));
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? 'UNKNOWN';
    if (code === 'ENOENT' || code === 'ENOTDIR') return fail(failure('file-missing', { file }));
    return fail(failure('file-unreadable', { file, why: whyUnreadable[code] ?? `the system says ${code}` }));
  }
}

const whyUnreadable: Readonly<Record<string, string>> = {
  EISDIR: 'it is a folder',
  EACCES: 'reading it is not allowed',
  EPERM: 'reading it is not allowed',
  ERR_FS_FILE_TOO_LARGE: 'it is larger than 2 GB',
};

/** Reads a photograph's bytes with its name; null where none was given. */
export async function readPhotograph(file: string | undefined): Promise<Result<PhotographFile | null>> {
  if (file === undefined) return ok(null);
  const bytes = await readInput(file);
  return bytes.ok ? ok({ bytes: bytes.value, fileName: basename(file) }) : bytes;
}

/** Reads a text file in UTF-8. */
export async function readText(file: string): Promise<Result<string>> {
  const bytes = await readInput(file);
  return bytes.ok ? ok(new TextDecoder().decode(bytes.value)) : bytes;
}
