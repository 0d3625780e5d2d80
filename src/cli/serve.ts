import { resolve } from 'node:path';
import { judgeCopiesFolder, rememberCopies, rememberedCopies } from '../application/copies/copiesFolder.ts';
import { lastGoodCopy } from '../application/copies/makeCopy.ts';
import { failure } from '../foundation/failure.ts';
import { ok, type Result } from '../foundation/result.ts';
import type { NetworkState } from '../records/device.ts';
import { loadSampleComparison } from '../sample/saltreach/sampleComparison.ts';
import { samplePulls } from '../sample/saltreach/samplePulls.ts';
import { sampleStudio } from '../sample/saltreach/sampleStudio.ts';
import { sampleTestStones } from '../sample/saltreach/testStone/sampleTestStones.ts';
import { startServer } from '../server/startServer.ts';
import { type OptionList, readArguments } from './arguments.ts';
import { exitDone } from './exitStatus.ts';
import { reportFailure } from './report.ts';
import { networkOptions, networkWish, networkWords } from './serveNetwork.ts';

export const serveOptions: OptionList = {
  data: './data',
  port: '4180',
  copies: '../copies',
  ...networkOptions,
};

/** On a damaged database: which copy to put back. */
async function nameLastGood(dataFolder: string): Promise<void> {
  const remembered = await rememberedCopies(dataFolder);
  const good = remembered === null ? null : await lastGoodCopy(remembered.folder);
  if (good === null) return;
  console.error(`The last good backup is ${good.file}, made ${good.madeAt}.`);
}

/** Where copies go: as given, which is remembered, else where they went before; null: nowhere. */
async function copiesFolderFor(
  dataFolder: string,
  given: string | undefined,
): Promise<Result<string | null>> {
  if (given === undefined) {
    const remembered = await rememberedCopies(dataFolder);
    return ok(remembered === null || remembered.stopped ? null : remembered.folder);
  }
  const judged = await judgeCopiesFolder(dataFolder, resolve(given));
  // a hint alone: a data folder that can't take it is told of when it is opened
  if (judged.ok) await rememberCopies(dataFolder, { folder: judged.value, stopped: false });
  return judged;
}

/** `stonetone serve`: serves the screens on the loopback address, with `--lan` to phones too, until interrupted. */
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
  const copies = await copiesFolderFor(dataFolder, given.value.options.get('copies'));
  if (!copies.ok) return reportFailure(copies.error);
  const network = networkWish(given.value);
  if (!network.ok) return reportFailure(network.error);
  let home = '';
  const tell = (state: NetworkState) => console.log(networkWords(state, home, process.stdout.isTTY === true));
  const started = await startServer({
    dataFolder,
    port,
    ...(copies.value !== null && { copiesFolder: copies.value }),
    // the first time it is told below, when the address of this machine's own screens is known
    ...(network.value && { network: { ...network.value, changed: (state) => home && tell(state) } }),
    sample: loadSampleComparison,
    studio: sampleStudio(),
    pulls: samplePulls,
    testStones: sampleTestStones,
  });
  if (!started.ok) {
    const status = reportFailure(started.error);
    if (started.error.code === 'database-damaged') await nameLastGood(dataFolder);
    return status;
  }
  home = started.value.address;
  console.log(`Stonetone is at ${home} (data in ${dataFolder}). Ctrl+C stops it.`);
  const reached = started.value.network();
  if (reached !== null) tell(reached);
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
