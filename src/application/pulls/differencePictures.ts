import { createHash, randomUUID } from 'node:crypto';
import { access, mkdir, readFile, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { PullChange } from '../../records/pullTones.ts';
import { moveDurably, writeSynced } from '../../store/files/durableFiles.ts';
import type { Store } from '../../store/openStore.ts';
import { answerInThread } from '../threads/answerInThread.ts';
import { threadModule } from '../threads/runInThread.ts';
import type { DifferenceAnswer, DifferenceTask } from './differenceThread.ts';
import { toneMapName } from './measurePull.ts';
import type { PairRule } from './pairTones.ts';

const summaryName = 'difference.json';
/** Two readings of one sheet differ by about this, before repeats of the room say otherwise. */
const startingFloor = 0.003;
/** σ is taken in steps, so that not every sheet that is photographed twice makes all pictures anew. */
const floorStep = 0.0005;

export interface DifferencePictures {
  readonly maps: NonNullable<PullChange['maps']>;
  /** Where each picture lies, by name. */
  readonly files: ReadonlyMap<string, string>;
}

/**
 * Where the pull is surely lighter or darker than its partner, as pictures; worked out once in a thread and kept in the
 * cache. null where one of the two left no map.
 * @param sigma of one reading in this room; null where it isn't known.
 */
export async function differencePictures(
  store: Pick<Store, 'pullFiles' | 'folder'>,
  beforeKey: string,
  afterKey: string,
  { scale, within }: PairRule,
  sigma: number | null,
): Promise<DifferencePictures | null> {
  const [before, after] = await Promise.all([
    store.pullFiles.pathOf(beforeKey, toneMapName),
    store.pullFiles.pathOf(afterKey, toneMapName),
  ]);
  if (before === null || after === null) return null;
  const floor = sigma === null ? startingFloor : Math.max(1, Math.round(sigma / floorStep)) * floorStep;
  const scales = { before: scale.partner.value, after: scale.pull.value };
  const key = createHash('sha256')
    .update(JSON.stringify([beforeKey, afterKey, scales, within, floor]))
    .digest('hex');
  const folder = join(store.folder.cache, 'differences', key.slice(0, 2), key);
  if (!(await isThere(join(folder, summaryName)))) {
    await make(store, folder, { before, after, scale: scales, within, floor });
  }
  const maps = JSON.parse(await readFile(join(folder, summaryName), 'utf8')) as DifferencePictures['maps'];
  const files = [maps.lighter, maps.darker].map((name) => [name, join(folder, name)] as const);
  return { maps, files: new Map(files) };
}

async function make(store: Pick<Store, 'folder'>, folder: string, task: DifferenceTask): Promise<void> {
  const { pictures, maps } = await answerInThread<DifferenceAnswer>(
    threadModule(import.meta.url, 'differenceThread'),
    task,
  );
  const working = join(store.folder.incoming, randomUUID());
  try {
    await mkdir(working);
    for (const [name, bytes] of pictures) await writeSynced(join(working, name), bytes);
    await writeSynced(join(working, summaryName), Buffer.from(JSON.stringify(maps)));
    await mkdir(dirname(folder), { recursive: true });
    await moveDurably(working, folder);
  } catch (error) {
    // somebody else may have put the same there meanwhile
    if (!(await isThere(join(folder, summaryName)))) throw error;
  } finally {
    await rm(working, { recursive: true, force: true });
  }
}

function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
