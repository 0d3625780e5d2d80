import { dataFolderAt } from '../../store/files/dataFolder.ts';
import { openStoreToRead } from '../../store/openStore.ts';
import { sealedTestStones } from '../testStones/sealedComparison.ts';
import { readyToRead } from './readyToRead.ts';

/**
 * What whoever asks for an export must know before it is made: it is whole, lists that are sealed too. Null where none is, or
 * where the folder can't be read, which the export says itself.
 */
export async function sealedInExport(dataFolder: string): Promise<string | null> {
  const folder = dataFolderAt(dataFolder);
  if (!(await readyToRead(folder)).ok) return null;
  const store = openStoreToRead(folder);
  if (!store.ok) return null;
  try {
    const names: string[] = [];
    for await (const { stone } of sealedTestStones({ store: store.value })) names.push(stone.name);
    if (names.length === 0) return null;
    return `Still sealed: ${names.join('; ')}. The export says what their patches got: whoever reads them leaves it alone.`;
  } finally {
    await store.value.close();
  }
}
