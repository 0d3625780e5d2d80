import type { BackupPart } from '../../records/backup.ts';

/** More parts than this are counted, not named. */
const mostNamed = 5;

/**
 * Compares the parts that were found with those that the manifest lists.
 * @returns which are wrong and how, as a clause; null where all are as listed.
 */
export function judgeParts(listed: readonly BackupPart[], found: readonly BackupPart[]): string | null {
  const known = new Map(listed.map((part) => [part.name, part]));
  const wrong: string[] = [];
  for (const { name, sha256, bytes } of found) {
    const part = known.get(name);
    if (part === undefined) wrong.push(`${name} is not on its list`);
    else if (part.bytes !== bytes || part.sha256 !== sha256) wrong.push(`${name} is not what was saved`);
    known.delete(name);
  }
  for (const name of known.keys()) wrong.push(`${name} is gone`);
  if (wrong.length === 0) return null;
  const more = wrong.length - mostNamed;
  return `${wrong.slice(0, mostNamed).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}
