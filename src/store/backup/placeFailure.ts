import { type Failure, failure } from '../../foundation/failure.ts';
import { sqliteCode } from '../database/openDatabase.ts';

/** A file of the data folder that could not be read while it was backed up. */
export class UnreadablePart extends Error {
  readonly path: string;

  constructor(path: string, cause: unknown) {
    super(cause instanceof Error ? cause.message : String(cause));
    this.path = path;
  }
}

/** What the system calls a disk, or a share of it, that takes nothing more; a file too large for it among them. */
const full = new Set(['ENOSPC', 'EDQUOT', 'EFBIG', 'SQLITE_FULL', 'SQLITE_IOERR_WRITE']);

const reasons: Readonly<Record<string, string>> = {
  EACCES: 'writing there is not allowed',
  EPERM: 'writing there is not allowed',
  EROFS: 'it can only be read',
  ENOENT: 'it is not there',
  ENOTDIR: 'it is not a folder',
  SQLITE_READONLY: 'it can only be read',
  SQLITE_CANTOPEN: 'writing there is not allowed',
};

/**
 * What to tell of an error met while writing into a folder: `disk-full`, `output-unwritable`, or `file-unreadable`
 * where a part could not be read. An error that comes from neither is thrown on.
 */
export function placeFailure(error: unknown, folder: string): Failure {
  if (error instanceof UnreadablePart)
    return failure('file-unreadable', { file: error.path, why: error.message });
  const code = sqliteCode(error) ?? (error as NodeJS.ErrnoException).code;
  if (typeof code !== 'string') throw error;
  const why = (error as Error).message;
  if (full.has(code)) return failure('disk-full', { folder, why });
  return failure('output-unwritable', { folder, why: reasons[code] ?? why });
}
