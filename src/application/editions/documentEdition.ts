import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EditionDocumentation } from '../../records/documentation.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { documentationOf } from '../../studio/editions/documentation.ts';
import { readWork } from '../works/findWork.ts';
import { noSuchEdition } from './findEditions.ts';

export interface DocumentParts {
  readonly store: Pick<KeptRecords, 'editions' | 'ledgers' | 'works' | 'stones'>;
}

/** What the trade records of an edition, with where each figure is kept; or `not-found`. */
export async function documentEdition(
  { store }: DocumentParts,
  id: string,
): Promise<Result<EditionDocumentation>> {
  const edition = await store.editions.find(id);
  if (edition === null) return fail(noSuchEdition());
  const work = await readWork({ store }, edition.workId);
  if (!work.ok) return work;
  return ok(documentationOf({ edition, work: work.value, entries: await store.ledgers.entries(id) }));
}
