import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { ComparisonRecord } from '../records/comparison.ts';
import type { PullTones } from '../records/pullTones.ts';
import { type OpenDatabase, openDatabase, openToRead, takeLock } from './database/openDatabase.ts';
import { type DataFolder, dataFolderAt, prepareDataFolder, sweepIncoming } from './files/dataFolder.ts';
import { type NetworkFiles, networkFilesIn } from './files/networkFiles.ts';
import { type PhotographFiles, photographFilesIn } from './files/photographFiles.ts';
import { type ResultFiles, resultFilesIn } from './files/resultFiles.ts';
import { type UploadFiles, uploadFilesIn } from './files/uploadFiles.ts';
import { type Decide, decideIn, type KeptRecords, keptRecordsIn } from './keptRecords.ts';
import { type ComparisonRepository, comparisonRepositoryIn } from './repositories/comparisonRepository.ts';
import { type SuspectRepository, suspectRepositoryIn } from './repositories/suspectRepository.ts';
import { type WaitRepository, waitRepositoryIn } from './repositories/waitRepository.ts';

/** One data folder, open: its rows and its files. */
export interface Store extends KeptRecords {
  readonly folder: DataFolder;
  readonly comparisons: ComparisonRepository;
  readonly suspectOutcomes: SuspectRepository;
  readonly waits: WaitRepository;
  readonly decide: Decide;
  readonly photographFiles: PhotographFiles;
  readonly networkFiles: NetworkFiles;
  readonly uploadFiles: UploadFiles;
  readonly resultFiles: ResultFiles<ComparisonRecord>;
  /** What the photographs of pulls were read to be. */
  readonly pullFiles: ResultFiles<PullTones>;
  /** Closes the database and gives the folder free. */
  close(): Promise<void>;
}

async function openLocked(folder: DataFolder, release: () => void): Promise<Result<Store>> {
  await sweepIncoming(folder);
  const opened = await openDatabase(folder.database);
  return opened.ok ? ok(storeOf(folder, opened.value, release)) : opened;
}

function storeOf(folder: DataFolder, { database, close }: OpenDatabase, release: () => void): Store {
  return {
    folder,
    comparisons: comparisonRepositoryIn(database),
    suspectOutcomes: suspectRepositoryIn(database),
    waits: waitRepositoryIn(database),
    ...keptRecordsIn(database),
    decide: decideIn(database),
    photographFiles: photographFilesIn(folder),
    networkFiles: networkFilesIn(folder),
    uploadFiles: uploadFilesIn(folder),
    resultFiles: resultFilesIn(folder, 'comparison.json'),
    pullFiles: resultFilesIn(folder, 'pull.json'),
    async close() {
      await close();
      release();
    },
  };
}

/**
 * Opens a data folder, making it where it is missing; one process at a time.
 * Fails with `data-folder-unusable`, `data-folder-busy`, `database-damaged` or `database-newer`.
 */
export async function openStore(dataFolder: string): Promise<Result<Store>> {
  const folder = dataFolderAt(dataFolder);
  let release: (() => void) | null = null;
  try {
    await prepareDataFolder(folder);
    release = takeLock(folder.lock);
    if (release === null) return fail(failure('data-folder-busy', { folder: folder.root }));
    const store = await openLocked(folder, release);
    if (!store.ok) release();
    return store;
  } catch (error) {
    release?.();
    const why = error instanceof Error ? error.message : String(error);
    return fail(failure('data-folder-unusable', { folder: folder.root, why }));
  }
}

/**
 * Opens a data folder that is there to be read and nothing else, served or not: it takes no lock, and whatever would write
 * throws SQLite's error. Its tables must be of this version.
 */
export function openStoreToRead(folder: DataFolder): Result<Store> {
  const opened = openToRead(folder.database);
  return opened.ok ? ok(storeOf(folder, opened.value, () => {})) : opened;
}
