import { ok, type Result } from '../../foundation/result.ts';
import type { EditionStart } from '../../records/editionStart.ts';
import type { Pull } from '../../records/pull.ts';
import type { PullTones } from '../../records/pullTones.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { editionStart } from '../../studio/editions/editionStart.ts';
import { inkedArea } from '../../studio/editions/inkedArea.ts';
import { type PullEntryParts, pullEntryOf } from '../pulls/pullEntryOf.ts';
import { readWork } from '../works/findWork.ts';

type Parts = PullEntryParts & {
  readonly store: Pick<KeptRecords, 'works' | 'stones' | 'series' | 'pulls' | 'pullMeasurings' | 'kit'>;
};

/** What an edition of a work may start from: its pull that is good to print, that pull's paper, the drawing; or `not-found`. */
export async function startOfEdition(parts: Parts, workId: string): Promise<Result<EditionStart>> {
  const { store } = parts;
  const work = await readWork({ store }, workId);
  if (!work.ok) return work;
  const { zones } = work.value;
  const approvals = await store.series.approvals(workId);
  const approval = approvals.find(({ withdrawn }) => withdrawn === null) ?? null;
  const pull = approval && (await store.pulls.find(approval.pullId));
  if (!approval || !pull) {
    return ok(editionStart({ approved: null, paper: null, inked: inkedArea(zones, null, null) }));
  }
  const read = await tonesOf(parts, pull, approval.photograph);
  const settings = await store.series.settings(workId);
  const fullFilm = settings?.reference?.darkness ?? read?.solid?.darkness ?? null;
  const paper = pull.paper.id === null ? null : await store.kit.find(pull.paper.id);
  return ok(editionStart({ approved: { pull, approval }, paper, inked: inkedArea(zones, read, fullFilm) }));
}

/** What was read of a pull: on the photograph that is the standard, else on its first that was read. */
async function tonesOf(parts: Parts, pull: Pull, standard: string | null): Promise<PullTones | null> {
  const { photographs } = await pullEntryOf(parts, parts.store, pull);
  const read = photographs.filter(({ measuring }) => measuring?.tones?.verdict === 'ok');
  const shown = read.find(({ photograph }) => photograph === standard) ?? read[0];
  return shown?.measuring?.tones ?? null;
}
