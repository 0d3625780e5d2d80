import { resolve } from 'node:path';
import { checkCopiesFolder, copiesFolderOf } from '../application/copies/copiesFolder.ts';
import { lastGoodCopy } from '../application/copies/makeCopy.ts';
import { failure } from '../foundation/failure.ts';
import { loadSampleComparison } from '../sample/saltreach/sampleComparison.ts';
import { samplePulls } from '../sample/saltreach/samplePulls.ts';
import { sampleStudio } from '../sample/saltreach/sampleStudio.ts';
import { startServer } from '../server/startServer.ts';
import { type OptionList, readArguments } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { reportFailure } from './report.ts';

export const serveOptions: OptionList = { data: './data', port: '4180', copies: '../copies' };

/** On a damaged database: which copy to put back. */
async function nameLastGood(dataFolder: string, given: string | undefined): Promise<void> {
  const folder = given === undefined ? await copiesFolderOf(dataFolder) : resolve(given);
  const good = folder === null ? null : await lastGoodCopy(folder);
  if (good === null) return;
  console.error(`The last good backup is ${good.file}, made ${good.madeAt}.`);
}

/** `stonetone serve`: serves the screens on the loopback address until interrupted. */
export async function serve(words: readonly string[]): Promise<number> {
  const given = readArguments(words, serveOptions);
  if (!given.ok) return reportFailure(given.error);
  const portText = given.value.options.get('port') ?? serveOptions.port!;
  const port = Number(portText);
  if (!Number.isInteger(port) || port < 0 || port > 65_535 || portText.trim() === '') {
    const why = 'it is not a whole number from 0 to 65535';
    return reportFailure(failure('argument-malformed', { name: '--port', why, example: '--port 4180' }));
  }
  const dataFolder = resolve(given.value.options.get('data') ?? serveOptions.data!);
  const copiesFolder = given.value.options.get('copies');
  if (copiesFolder !== undefined) {
    const usable = await checkCopiesFolder(dataFolder, resolve(copiesFolder));
    if (!usable.ok) return reportFailure(usable.error);
  }
  const started = await startServer({
    dataFolder,
    port,
    ...(copiesFolder !== undefined && { copiesFolder: resolve(copiesFolder) }),
    sample: loadSampleComparison,
    studio: sampleStudio(),
    pulls: samplePulls,
  });
  if (!started.ok) {
    const status = reportFailure(started.error);
    if (started.error.code === 'database-damaged') await nameLastGood(dataFolder, copiesFolder);
    return status;
  }
  console.log(`Stonetone is at ${started.value.address} (data in ${dataFolder}). Ctrl+C stops it.`);
  await interrupted();
  await started.value.stop();
  return exitDone;
}

function interrupted(): Promise<void> {
  return new Promise((done) => {
    process.once('SIGINT', () => done());
    process.once('SIGTERM', () => done());
  });
}
