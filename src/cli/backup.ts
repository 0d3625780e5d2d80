import { makeBackup } from '../application/backup/makeBackup.ts';
import { type OptionList, readArguments, required } from './arguments.ts';
import { backupSentence } from './backupSentence.ts';
import { exitDone } from './exitStatus.ts';
import { reportFailure } from './report.ts';

export const backupOptions: OptionList = { data: './data', to: 'saltreach.tar' };

/** `stonetone backup`: saves a data folder into one file, also while it is served. */
export async function backup(words: readonly string[]): Promise<number> {
  const given = readArguments(words, backupOptions);
  if (!given.ok) return reportFailure(given.error);
  const data = required(given.value, 'data', backupOptions.data!);
  if (!data.ok) return reportFailure(data.error);
  const to = required(given.value, 'to', backupOptions.to!);
  if (!to.ok) return reportFailure(to.error);
  const made = await makeBackup({ dataFolder: data.value, to: to.value, now: () => new Date() });
  if (!made.ok) return reportFailure(made.error);
  for (const concern of made.value.concerns) console.log(`Mind: ${concern}`);
  console.log(`Saved ${backupSentence(made.value)} to ${to.value}.`);
  return exitDone;
}
