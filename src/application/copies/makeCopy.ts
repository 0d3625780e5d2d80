import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { CopiesState, CopyCheck } from '../../records/copies.ts';
import { placeFailure } from '../../store/backup/placeFailure.ts';
import { moveDurably } from '../../store/files/durableFiles.ts';
import { makeBackup } from '../backup/makeBackup.ts';
import { verifyBackup } from '../backup/verifyBackup.ts';
import { checkCopy } from './checkCopy.ts';
import { copyDay, copyName, dayOfCopy, isHalfCopy, newCopyName } from './copyNames.ts';
import { copiesToRemove } from './thinCopies.ts';

export type GoodCopy = NonNullable<CopiesState['lastGood']>;

/** A copy that was made and read back. */
export interface MadeCopy extends GoodCopy {
  readonly check: CopyCheck;
}

export interface CopyOrder {
  readonly dataFolder: string;
  /** Where copies go; it must be there. */
  readonly folder: string;
  /** The moment by whose day the copy is named, ISO 8601. */
  readonly at: string;
  /** Makes one in place of the day's, where there is one; it stays until the new one is whole. */
  readonly anew: boolean;
}

/** What is left after this long is of no copy that is still being made. */
const halfAfterMs = 3_600_000;

/**
 * Makes the copy of a day unless there is one, reads it back from end to end, and only then lets older ones go. A copy that
 * does not verify is removed, and nothing older goes.
 * @returns the copy; or as `makeBackup` and `verifyBackup` fail
 */
export async function makeCopy({ dataFolder, folder, at, anew }: CopyOrder): Promise<Result<MadeCopy>> {
  const day = copyDay(new Date(at));
  const file = join(folder, copyName(day));
  const there = await stat(file).then(
    () => true,
    () => false,
  );
  const made = there && anew ? join(folder, newCopyName(day)) : file;
  if (!there || anew) {
    if (made !== file) await rm(made, { force: true });
    const saved = await makeBackup({ dataFolder, to: made, now: () => new Date(at) });
    if (!saved.ok) return saved;
  }
  const check = await checkCopy({ file: made, at });
  if (check.failure !== null) {
    await rm(made, { force: true });
    return fail(check.failure);
  }
  try {
    if (made !== file) await moveDurably(made, file);
    await sweepHalfCopies(folder, Date.parse(at));
    const days = (await readdir(folder)).flatMap((name) => dayOfCopy(name) ?? []);
    for (const old of copiesToRemove(days)) await rm(join(folder, copyName(old)), { force: true });
  } catch (error) {
    return fail(placeFailure(error, folder));
  }
  return ok({ file, madeAt: check.madeAt!, check });
}

/** Removes what copies that were broken off left behind. */
async function sweepHalfCopies(folder: string, now: number): Promise<void> {
  for (const name of (await readdir(folder)).filter(isHalfCopy)) {
    const { mtimeMs } = await stat(join(folder, name));
    if (now - mtimeMs > halfAfterMs) await rm(join(folder, name), { force: true });
  }
}

/** The newest daily copy that verifies; null where none does, or the folder can't be read. */
export async function lastGoodCopy(folder: string): Promise<GoodCopy | null> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names
    .filter((one) => dayOfCopy(one) !== null)
    .sort()
    .reverse()) {
    const file = join(folder, name);
    const verified = await verifyBackup(file);
    if (verified.ok) return { file, madeAt: verified.value.madeAt };
  }
  return null;
}
