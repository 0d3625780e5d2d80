import { restoreBackup } from '../application/backup/restoreBackup.ts';
import { failure } from '../foundation/failure.ts';
import { type OptionList, readArguments, required } from './arguments.ts';
import { backupSentence } from './backupSentence.ts';
import { exitDone } from './exitStatus.ts';
import { reportFailure } from './report.ts';

export const restoreOptions: OptionList = { data: './data' };

/** `stonetone restore FILE`: puts a backup back as a data folder that is not there yet, or empty. */
export async function restore(words: readonly string[]): Promise<number> {
  const given = readArguments(words, restoreOptions, 1);
  if (!given.ok) return reportFailure(given.error);
  const file = given.value.word;
  if (!file) {
    return reportFailure(
      failure('argument-missing', { name: 'the backup', example: 'such as saltreach.tar' }),
    );
  }
  const data = required(given.value, 'data', restoreOptions.data!);
  if (!data.ok) return reportFailure(data.error);
  const restored = await restoreBackup(file, data.value);
  if (!restored.ok) return reportFailure(restored.error);
  for (const concern of restored.value.concerns) console.log(`Mind: ${concern}`);
  console.log(`Restored ${backupSentence(restored.value)} to ${data.value}.`);
  return exitDone;
}
