import type { BackupManifest } from '../records/backup.ts';

/** What a backup holds, as a clause: photographs, files of results, the database's version, megabytes (10⁶ bytes). */
export function backupSentence({ parts, databaseVersion }: BackupManifest): string {
  const under = (folder: string) => parts.filter(({ name }) => name.startsWith(`${folder}/`)).length;
  const megabytes = parts.reduce((sum, { bytes }) => sum + bytes, 0) / 1e6;
  const counts = `${counted(under('photographs'), 'photograph')}, ${counted(under('results'), 'file')} of results`;
  return `a database of version ${databaseVersion}, ${counts}, ${megabytes.toFixed(1)} MB in all`;
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}
