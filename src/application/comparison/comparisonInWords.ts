import { readFile } from 'node:fs/promises';
import { failure } from '../../foundation/failure.ts';
import { fail, type Result } from '../../foundation/result.ts';
import type { ComparisonSheetInput, SheetPictures } from '../../paper/sheets/comparison/sheetInput.ts';
import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import type { Store } from '../../store/openStore.ts';
import type { EntryParts } from '../comparisonEntryOf.ts';
import { comparisonFile } from '../comparisonFile.ts';
import { dateWords } from '../dateWords.ts';
import { type PictureParts, picturePreview } from '../pictureTile.ts';
import { readComparison } from '../readComparison.ts';
import { threadModule } from '../threads/runInThread.ts';
import { setSheet } from '../threads/setSheet.ts';

/** Files of a comparison that hold words, kept in plain English. */
export type WordedFile = 'sheet.pdf' | 'ladder.svg' | 'curve.svg';

/** Whether a file of a comparison is set anew where other words are asked for. */
export function isWorded(name: string): name is WordedFile {
  return name === 'sheet.pdf' || name === 'ladder.svg' || name === 'curve.svg';
}

/** What the thread is given. */
export interface WordedTask {
  readonly name: WordedFile;
  readonly sheet: ComparisonSheetInput;
}

interface Parts extends EntryParts, PictureParts {
  readonly store: PictureParts['store'] & Pick<Store, 'comparisons' | 'resultFiles' | 'testStones'>;
}

/**
 * A comparison's sheet or chart in the words that are asked for, set anew from its record; `not-found` for a file that it does
 * not have.
 */
export async function comparisonInWords(
  parts: Parts,
  id: string,
  name: WordedFile,
): Promise<Result<Uint8Array>> {
  const kept = await comparisonFile(parts, id, name);
  if (!kept.ok) return kept;
  const entry = await readComparison(parts, id);
  if (!entry.ok) return entry;
  const { title, createdAt, record } = entry.value;
  if (record === null) return fail(failure('not-found', { what: 'such file' }));
  const day = new Date(createdAt);
  const pictures = name === 'sheet.pdf' ? await picturesOf(parts, entry.value) : null;
  const sheet = { record, title, dateText: dateWords(day), createdAt: day, pictures };
  const task: WordedTask = { name, sheet };
  return setSheet(threadModule(import.meta.url, 'wordedThread'), task);
}

/** Wide enough for a third of a page in print, px. */
const pictureWidthPx = 900;

/** Those of a measured pair as they lie on the stone, of a refused one as they were taken; null where one is not kept any more. */
async function picturesOf(
  parts: Parts,
  { id, record, request, files }: ComparisonEntry,
): Promise<SheetPictures | null> {
  const measured = record?.verdict === 'ok';
  const side = (name: 'stone' | 'proof') =>
    measured
      ? comparisonFile(parts, id, `${name}.jpg`)
      : picturePreview(parts, request[name].photograph, pictureWidthPx);
  const [stone, proof] = [await side('stone'), await side('proof')];
  if (!stone.ok || !proof.ok) return null;
  const overlay = files.includes('overlay.png') ? await comparisonFile(parts, id, 'overlay.png') : null;
  const bytes = async (path: string) => new Uint8Array(await readFile(path));
  return {
    stone: await bytes(stone.value),
    proof: await bytes(proof.value),
    overlay: overlay?.ok ? await bytes(overlay.value) : null,
  };
}
