import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EditionDocumentation } from '../../records/documentation.ts';
import type { Paper } from '../../records/paper.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { documentationOf } from '../../studio/editions/documentation.ts';
import type { ReadRunParts } from '../bench/readRun.ts';
import { dateWords } from '../dateWords.ts';
import { readRunsAndPlan } from '../papers/workRecords.ts';
import { readWork } from '../works/findWork.ts';
import type { EditionSheetDesk } from './editionSheetDesk.ts';
import { noSuchEdition } from './findEditions.ts';

interface DocumentParts extends ReadRunParts {
  readonly store: ReadRunParts['store'] & Pick<KeptRecords, 'editions' | 'ledgers' | 'stones'>;
}

/** What the trade records of an edition, with where each figure is kept; or `not-found`. */
export async function documentEdition(
  parts: DocumentParts,
  id: string,
): Promise<Result<EditionDocumentation>> {
  const { store } = parts;
  const edition = await store.editions.find(id);
  if (edition === null) return fail(noSuchEdition());
  const work = await readWork({ store }, edition.workId);
  if (!work.ok) return work;
  const entries = await store.ledgers.entries(id);
  const etched = await readRunsAndPlan(parts, edition.workId);
  return ok(documentationOf({ edition, work: work.value, entries, ...etched }));
}

interface SheetParts extends DocumentParts {
  readonly editionSheets: EditionSheetDesk;
}

/** The same as a PDF, dated today; or `not-found`. */
export async function editionSheet(parts: SheetParts, id: string, paper: Paper): Promise<Result<Uint8Array>> {
  const documentation = await documentEdition(parts, id);
  if (!documentation.ok) return documentation;
  const createdAt = parts.now();
  const dateText = dateWords(createdAt);
  return parts.editionSheets.make({ documentation: documentation.value, paper, dateText, createdAt });
}
