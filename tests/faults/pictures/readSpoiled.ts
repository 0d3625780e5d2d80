import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ingestPhotograph, uploadNames } from '../../../src/application/pictures/ingestPhotograph.ts';
import { seededRandom } from '../../../src/foundation/random.ts';
import { oneOf } from '../requests/choose.ts';
import { decoderPictures, soundPictures, swarmingPictures } from './soundPictures.ts';
import { spoiledPicture, spoilings } from './spoiledPicture.ts';

/**
 * Takes spoiled pictures in as the server does, one after the other, in a process of its own, so that one that kills it
 * is known by its number. Prints a line of JSON before each and one after.
 */
export interface SpoiledLine {
  readonly number: number;
  /** How it was spoiled; the ending that its name had. */
  readonly what: string;
  /** Missing while it is read. */
  readonly end?: {
    readonly code: string;
    readonly message: string;
    readonly ms: number;
    readonly mostMegabytes: number;
  };
}

const [seed, from, to] = process.argv.slice(2).map(Number) as [number, number, number];
const sound = await soundPictures();
const asTheyAre = [...decoderPictures(), ...(await swarmingPictures())];
const endings = ['jpg', 'png', 'tif', 'webp', 'heic', 'pdf', 'exe', ''];
const folder = await mkdtemp(join(tmpdir(), 'stonetone-spoiled-'));

function picture(number: number): { what: string; name: string; bytes: Uint8Array } {
  const set = asTheyAre[number];
  if (set !== undefined) return { what: `${set.name} as it is`, ...set };
  const random = seededRandom(seed * 1_000_003 + number);
  const { name, bytes } = sound[number % sound.length]!;
  const other = oneOf(random, sound).bytes;
  const how = oneOf(random, spoilings);
  const named = random() < 0.2 ? `${name.split('.')[0]}.${oneOf(random, endings)}` : name;
  return { what: `${name} ${how}`, name: named, bytes: spoiledPicture(bytes, other, how, random) };
}

try {
  for (let number = from; number < to; number++) {
    const { what, name, bytes } = picture(number);
    console.log(JSON.stringify({ number, what } satisfies SpoiledLine));
    const place = join(folder, String(number));
    await mkdir(place);
    await writeFile(join(place, uploadNames.received), bytes);
    const began = performance.now();
    const ended = await ingestPhotograph(place, name).then(
      (result) => (result.ok ? { code: 'read', message: '' } : result.error),
      (error: unknown) => ({
        code: 'thrown',
        message: error instanceof Error ? String(error.stack) : String(error),
      }),
    );
    const ms = performance.now() - began;
    await rm(place, { recursive: true });
    const mostMegabytes = process.resourceUsage().maxRSS / 1024;
    const { code, message } = ended;
    console.log(
      JSON.stringify({ number, what, end: { code, message, ms, mostMegabytes } } satisfies SpoiledLine),
    );
  }
} finally {
  await rm(folder, { recursive: true, force: true });
}
