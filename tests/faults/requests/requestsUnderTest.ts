import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openServices } from '../../../src/application/openServices.ts';
import { placeStudio } from '../../../src/application/placeStudio.ts';
import { seededRandom } from '../../../src/foundation/random.ts';
import { sampleStudio } from '../../../src/sample/saltreach/sampleStudio.ts';
import { buildApp } from '../../../src/server/buildApp.ts';
import { soundPictures } from '../pictures/soundPictures.ts';
import { spoiledPicture, spoilings } from '../pictures/spoiledPicture.ts';
import { oneOf } from './choose.ts';
import { folderFaults } from './folderFaults.ts';
import { createKnownThings } from './knownThings.ts';
import { askedHosts } from './madeRequest.ts';
import { type RequestsToSend, type SentRequests, sendRequests } from './sendRequests.ts';

/** Stands in for measuring a comparison, which takes seconds and is tried elsewhere; pulls are measured in earnest. */
const measuringModule = new URL('../../server/fakeMeasuring.ts', import.meta.url);

/**
 * Fills a data folder with the invented studio, sends it generated requests, lets it end, and looks whether what it
 * left is consistent. The faults of both are given together.
 */
export async function requestsUnderTest(
  seed: number,
  { count, atOnce, shareOfHeavy }: Pick<RequestsToSend, 'count' | 'atOnce' | 'shareOfHeavy'>,
): Promise<SentRequests> {
  const root = await mkdtemp(join(tmpdir(), 'stonetone-requests-'));
  try {
    const dataFolder = join(root, 'data');
    const scratch = join(root, 'copies');
    await mkdir(scratch);
    const opened = await openServices({ dataFolder, largestBytes: 1e6, measuringModule });
    if (!opened.ok) throw new Error(opened.error.message);
    const services = opened.value;
    await placeStudio(services, sampleStudio());
    const app = await buildApp(services, { hosts: () => askedHosts });
    const sound = (await soundPictures()).map(({ bytes }) => bytes);
    const sent = await sendRequests(app, {
      random: seededRandom(seed),
      known: createKnownThings(),
      pictures: sound,
      spoil: (picture, random) =>
        spoiledPicture(picture, oneOf(random, sound), oneOf(random, spoilings), random),
      scratch,
      count,
      atOnce,
      shareOfHeavy,
    });
    await app.close();
    await services.close();
    return { ...sent, faults: [...sent.faults, ...(await folderFaults(dataFolder))] };
  } finally {
    await rm(root, { recursive: true, force: true });
  }
}
