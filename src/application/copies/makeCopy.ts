import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { ok, type Result } from '../../foundation/result.ts';
import type { CopiesState } from '../../records/copies.ts';
import { makeBackup } from '../backup/makeBackup.ts';
import { verifyBackup } from '../backup/verifyBackup.ts';
import { copyName, dayOfCopy, isHalfCopy } from './copyNames.ts';
import { copiesToRemove } from './thinCopies.ts';

export type GoodCopy = NonNullable<CopiesState['lastGood']>;

export interface CopyOrder {
  readonly dataFolder: string;
  /** Where copies go; it must be there. */
  readonly folder: string;
  /** The moment by whose day the copy is named, ISO 8601. */
  readonly at: string;
}

/** What is left after this long is of no copy that is still being made. */
const halfAfterMs = 3_600_000;

/**
 * Makes the copy of a day unless there is one, reads it back from end to end, and only then lets older ones go. A copy that
 * does not verify is removed, and nothing older goes.
 * @returns the copy; or as `makeBackup` and `verifyBackup` fail
 */
export async function makeCopy({ dataFolder, folder, at }: CopyOrder): Promise<Result<GoodCopy>> {
  const file = join(folder, copyName(new Date(at)));
  const there = await stat(file).then(
    () => true,
    () => false,
  );
  if (!there) {
    const made = await makeBackup({ dataFolder, to: file, now: () => new Date(at) });
    if (!made.ok) return made;
  }
  const verified = await verifyBackup(file);
  if (!verified.ok) {
    await rm(file, { force: true });
    return verified;
  }
  await sweepHalfCopies(folder, Date.parse(at));
  const days = (await readdir(folder)).flatMap((name) => dayOfCopy(name) ?? []);
  for (const day of copiesToRemove(days)) await rm(join(folder, `stonetone-${day}.tar`), { force: true });
  return ok({ file, madeAt: verified.value.madeAt });
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
