import { randomUUID } from 'node:crypto';
import { access, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { failure } from '../../foundation/failure.ts';
import { ok, type Result } from '../../foundation/result.ts';
import { moveDurably } from '../../store/files/durableFiles.ts';
import type { Store } from '../../store/openStore.ts';
import type { StoredPhotograph } from '../../store/repositories/photographRepository.ts';
import { runInProcess } from '../threads/runInProcess.ts';
import { threadModule } from '../threads/runInThread.ts';
import { createThreadDesk } from '../threads/threadDesk.ts';
import type { TonesAnswer } from '../zoneTones/readTones.ts';
import type { TonePlace } from '../zoneTones/tonePlace.ts';
import type { CornerSuggestion, PictureAnswers, PictureTask } from './pictureTask.ts';

/** Heavy work on single photographs, in processes of their own, two at a time; `picture-too-slow` where one takes for ever. */
export interface PictureDesk {
  /** Reads an upload whole; see `ingestPhotograph`. */
  ingest(folder: string, fileName: string): Promise<PictureAnswers['ingest']>;
  /** The folder of a kept photograph's previews and tiles, made again where the cache was emptied. */
  pyramidOf(photograph: StoredPhotograph): Promise<Result<string>>;
  /** Puts a pyramid that was made on the way in into the cache. */
  keepPyramid(id: string, madeIn: string): Promise<void>;
  /** The rectangle on a kept photograph; worked out once while the program runs. */
  cornersOf(photograph: StoredPhotograph): Promise<Result<CornerSuggestion>>;
  /** Tones of zones on a kept photograph, and the washes named split by them; `stopped` where it is called off. */
  tonesOf(
    photograph: StoredPhotograph,
    place: TonePlace,
    washes: readonly string[],
    called?: AbortSignal,
  ): Promise<Result<TonesAnswer>>;
  /** Ends all work where it stands. */
  stop(): Promise<void>;
}

const tasksAtOnce = 2;
/** A photograph of 100 megapixels takes ten seconds or so; what takes longer than this must not hold a place for ever, ms. */
const pictureWithinMs = 120_000;

/** The desk for the photographs of an open store. */
export function createPictureDesk(store: Pick<Store, 'folder' | 'photographFiles'>): PictureDesk {
  const threads = createThreadDesk(tasksAtOnce, runInProcess);
  const pyramids = new Map<string, Promise<Result<string>>>();
  const suggestions = new Map<string, Promise<Result<CornerSuggestion>>>();

  async function perform<Kind extends PictureTask['kind']>(
    task: Extract<PictureTask, { kind: Kind }>,
    called?: AbortSignal,
  ): Promise<PictureAnswers[Kind] | Result<never>> {
    const module = threadModule(import.meta.url, 'pictureThread');
    const late = failure('picture-too-slow', {
      file: task.fileName,
      seconds: pictureWithinMs / 1000,
    });
    const limit = { withinMs: pictureWithinMs, late };
    const ended = await threads.run<PictureAnswers[Kind]>(module, task, limit, called);
    return ended.ok ? ended.value : ended;
  }

  const cacheOf = (id: string) => join(store.folder.cache, 'pictures', id.slice(0, 2), id);
  const fileOf = ({ id, kind }: StoredPhotograph) => store.photographFiles.pathOf(id, kind);

  /** One that is already there is whole, since it came by a rename: it stays. */
  async function keepPyramid(id: string, madeIn: string): Promise<void> {
    await moveDurably(madeIn, cacheOf(id)).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'ENOTEMPTY' && error.code !== 'EEXIST') throw error;
    });
  }

  async function makePyramid(photograph: StoredPhotograph): Promise<Result<string>> {
    const place = cacheOf(photograph.id);
    const there = await access(place).then(
      () => true,
      () => false,
    );
    if (there) return ok(place);
    const working = join(store.folder.incoming, randomUUID());
    const { fileName } = photograph;
    const made = await perform({ kind: 'pyramid', file: fileOf(photograph), fileName, folder: working });
    if (made.ok) await keepPyramid(photograph.id, working);
    await rm(working, { recursive: true, force: true });
    return made.ok ? ok(place) : made;
  }

  /** Shares one piece of work among all who ask for it at the same time; a failed one is tried again. */
  function shared<T>(
    known: Map<string, Promise<Result<T>>>,
    id: string,
    work: () => Promise<Result<T>>,
  ): Promise<Result<T>> {
    const running = known.get(id) ?? work();
    known.set(id, running);
    const forget = () => known.delete(id);
    running.then((result) => result.ok || forget(), forget);
    return running;
  }

  return {
    ingest: (folder, fileName) => perform({ kind: 'ingest', folder, fileName }),
    keepPyramid,
    pyramidOf: (photograph) => shared(pyramids, photograph.id, () => makePyramid(photograph)),
    cornersOf: (photograph) =>
      shared(suggestions, photograph.id, () =>
        perform({ kind: 'corners', file: fileOf(photograph), fileName: photograph.fileName }),
      ),
    tonesOf: (photograph, place, washes, called) =>
      perform(
        { kind: 'tones', file: fileOf(photograph), fileName: photograph.fileName, place, washes },
        called,
      ),
    stop: threads.stop,
  };
}
