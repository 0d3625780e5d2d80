import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';
import type { InkAnswer, InkQuestion } from '../../records/inkAnswer.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { strengthOfTone } from '../../studio/etch/chooseRow.ts';
import { mediumOf } from '../../studio/etch/mediumCatalogue.ts';
import { answerInk } from '../../studio/ink/answerInk.ts';
import { inkAreas } from '../../studio/ink/inkAreas.ts';
import { noSuchWork } from '../works/findWork.ts';

/** Where to start the ink of a work from, by what is drawn on it and measured; or `not-found`. */
export async function inkForWork(
  { store }: { readonly store: Pick<KeptRecords, 'works' | 'media'> },
  workId: string,
  asked: Pick<InkQuestion, 'proofs' | 'edition' | 'modifierPercent'>,
): Promise<Result<InkAnswer>> {
  const work = await store.works.find(workId);
  if (work === null) return fail(noSuchWork());
  const own = await store.media.list();
  const strengthOf = (id: string): EtchStrength | null => {
    const rule = mediumOf(id, own)?.rule;
    if (rule === undefined || rule.kind === 'none') return null;
    return rule.kind === 'fixed' ? rule.strength : rule.otherwise;
  };
  const { notKnown, ...areas } = inkAreas(work.zones, strengthOf, strengthOfTone);
  const answer = answerInk({ ...areas, ...asked, viscosityPaS: null });
  if (notKnown.length === 0) return ok(answer);
  const left = `Left out, since it is not known how heavy they are: ${notKnown.join(', ')}. Read their tones or name their deposit.`;
  return ok({ ...answer, warnings: [left, ...answer.warnings] });
}
