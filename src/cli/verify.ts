import { verifyBackup } from '../application/backup/verifyBackup.ts';
import { failure } from '../foundation/failure.ts';
import { readArguments } from './arguments.ts';
import { backupSentence } from './backupSentence.ts';
import { exitDone } from './exitStatus.ts';
import { reportFailure } from './report.ts';

/** `stonetone verify FILE`: judges every byte of a backup. */
export async function verify(words: readonly string[]): Promise<number> {
  const given = readArguments(words, {}, 1);
  if (!given.ok) return reportFailure(given.error);
  const file = given.value.word;
  if (!file) {
    return reportFailure(
      failure('argument-missing', { name: 'the backup', example: 'such as saltreach.tar' }),
    );
  }
  const verified = await verifyBackup(file);
  if (!verified.ok) return reportFailure(verified.error);
  for (const concern of verified.value.concerns) console.log(`Mind: ${concern}`);
  console.log(`${file} is whole: ${backupSentence(verified.value)}, saved at ${verified.value.madeAt}.`);
  return exitDone;
}
