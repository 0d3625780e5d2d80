import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The rooms whose rules a log is read by. */
const rooms = ['../../studio/bench/', '../../studio/etch/'];

/**
 * Names the rules by which logs are read: a digest of their program text, so that what other rules worked out is never
 * taken for theirs, and nobody has to remember to raise a number.
 */
export function foldVersion(): string {
  const digest = createHash('sha256');
  for (const room of rooms) {
    const folder = fileURLToPath(new URL(room, import.meta.url));
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
      (name) => /\.[jt]s$/.test(name) && !name.includes('.test'),
    );
    for (const name of files.sort()) digest.update(name).update(readFileSync(join(folder, name)));
  }
  return digest.digest('hex');
}
