import type { Result } from '../../foundation/result.ts';
import type { BackupManifest } from '../../records/backup.ts';
import { readBackup } from '../../store/backup/readBackup.ts';

/** Reads a backup from end to end and judges every byte of it. Fails as reading a backup does. */
export function verifyBackup(file: string): Promise<Result<BackupManifest>> {
  return readBackup(file, async (_name, content) => {
    for await (const _ of content);
  });
}
