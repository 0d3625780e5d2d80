import { failure } from '../../foundation/failure.ts';
import { fail, type Result } from '../../foundation/result.ts';
import type { LabelSheetInput } from '../../paper/sheets/labelSheet.ts';
import type { Label } from '../../records/label.ts';
import type { Paper } from '../../records/paper.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { batchLabel, printLabelsOf, stoneLabel } from '../../studio/papers/labelsOf.ts';
import { threadModule } from '../threads/runInThread.ts';
import { setSheet } from '../threads/setSheet.ts';

interface LabelParts {
  readonly store: Pick<KeptRecords, 'stones' | 'batches' | 'editions'>;
  readonly now: () => Date;
}

/** What labels are wanted for, by ids. */
export interface LabelsWanted {
  readonly stones: readonly string[];
  readonly batches: readonly string[];
  readonly editions: readonly string[];
  /** Client ids of impressions; of an edition none of whose is named, every curated print. */
  readonly prints: readonly string[];
  readonly origin: string;
  readonly paper: Paper;
}

/** Labels on a sheet, in the order in which they were asked for; `reference-unknown` for what is not kept here. */
export async function labelSheet(parts: LabelParts, wanted: LabelsWanted): Promise<Result<Uint8Array>> {
  const { stones, batches, editions } = parts.store;
  const labels: Label[] = [];
  const unknown = (what: string, id: string, path: string) =>
    fail(failure('reference-unknown', { what, id }, path));
  for (const id of wanted.stones) {
    const stone = await stones.find(id);
    if (stone === null) return unknown('stone', id, 'stones');
    labels.push(stoneLabel(stone));
  }
  for (const id of wanted.batches) {
    const batch = await batches.find(id);
    if (batch === null) return unknown('batch', id, 'batches');
    labels.push(batchLabel(batch));
  }
  for (const id of wanted.editions) {
    const edition = await editions.find(id);
    if (edition === null) return unknown('edition', id, 'editions');
    labels.push(...printLabelsOf(edition, wanted.prints));
  }
  const { origin, paper } = wanted;
  const input: LabelSheetInput = { labels, origin, paper, createdAt: parts.now() };
  return setSheet(threadModule(import.meta.url, 'labelThread'), input);
}
