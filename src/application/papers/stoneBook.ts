import { fail, ok, type Result } from '../../foundation/result.ts';
import type { StoneBook } from '../../records/stoneBook.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { Store } from '../../store/openStore.ts';
import { type BookWork, stoneChapter, workChapter } from '../../studio/papers/stoneBook.ts';
import { noSuchStone } from '../stones/findStone.ts';
import { threadModule } from '../threads/runInThread.ts';
import { setSheet } from '../threads/setSheet.ts';
import { readWorkRecords, type WorkRecordParts } from './workRecords.ts';

export interface BookParts extends WorkRecordParts {
  readonly store: WorkRecordParts['store'] & Pick<Store, 'editions' | 'ledgers'>;
}

/** The life of a stone with every work on it; or `not-found`. */
export async function readStoneBook(parts: BookParts, stoneId: string): Promise<Result<StoneBook>> {
  const stone = await parts.store.stones.find(stoneId);
  if (stone === null) return fail(noSuchStone());
  const chapters = [stoneChapter(stone)];
  const works = await parts.store.works.onStone(stoneId);
  for (const { id } of works.toSorted((one, other) => one.createdAt.localeCompare(other.createdAt))) {
    const kept = await bookWork(parts, id);
    if (!kept.ok) return kept;
    chapters.push(workChapter(kept.value));
  }
  return ok({
    title: `The book of stone ${stone.name}`,
    facts: factsOf(stone),
    chapters,
    madeAt: parts.now().toISOString(),
  });
}

/** The life of one work; or `not-found`. */
export async function readWorkBook(parts: BookParts, workId: string): Promise<Result<StoneBook>> {
  const kept = await bookWork(parts, workId);
  if (!kept.ok) return kept;
  const { work } = kept.value;
  return ok({
    title: `The book of ${work.title}`,
    facts: factsOf(work.stone),
    chapters: [workChapter(kept.value)],
    madeAt: parts.now().toISOString(),
  });
}

/** A book as a PDF. */
export async function bookSheet(book: Promise<Result<StoneBook>>): Promise<Result<Uint8Array>> {
  const read = await book;
  return read.ok ? setSheet(threadModule(import.meta.url, 'stoneBookThread'), read.value) : read;
}

function factsOf({ name, widthMm, heightMm, colour }: KeptStone): StoneBook['facts'] {
  return [
    ['Stone', name],
    ['Size', `${widthMm} × ${heightMm} mm`],
    ['Colour', colour === '' ? null : colour],
  ];
}

async function bookWork(parts: BookParts, workId: string): Promise<Result<BookWork>> {
  const { store } = parts;
  const records = await readWorkRecords(parts, workId);
  if (!records.ok) return records;
  const editions: BookWork['editions'][number][] = [];
  for (const edition of await store.editions.ofWork(workId))
    editions.push({ edition, entries: await store.ledgers.entries(edition.id) });
  return ok({
    ...records.value,
    plans: await store.plans.listFirst(workId),
    secondEtches: await store.plans.listSecond(workId),
    pulls: await store.pulls.ofWork(workId),
    approvals: await store.series.approvals(workId),
    editions,
  });
}
