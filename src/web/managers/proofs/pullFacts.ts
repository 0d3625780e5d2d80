import type { PickedThing, Pull, PullDraft, PullKind } from '../../../records/pull.ts';
import { say } from '../../words/say.ts';
import { localText, momentOf } from '../localMoment.ts';
import { numberText, numberTrouble, typedNumber } from '../typedNumber.ts';

/** The facts of a pull as they are typed; empty means not known. */
export type PullFactsTyped = {
  readonly number: string;
  readonly kind: string;
  readonly paper: string;
  readonly damp: string;
  readonly madeAt: string;
  readonly ink: string;
  readonly roller: string;
  readonly charges: string;
  readonly passes: string;
  readonly pressureEighths: string;
  readonly packing: string;
  readonly who: string;
  readonly remarks: string;
};

/** What each fact is called, in the order shown. */
export const pullFactWords: Readonly<Record<keyof PullFactsTyped, string>> = {
  number: say('Number'),
  kind: say('Made as a'),
  paper: say('Paper'),
  damp: say('Damp or dry'),
  madeAt: say('Pulled'),
  ink: say('Ink'),
  roller: say('Roller'),
  charges: say('Charges'),
  passes: say('Passes a charge'),
  pressureEighths: say('Eighths from contact'),
  packing: say('Packing'),
  who: say('Who'),
  remarks: say('Remarks'),
};

export function pullFactsTyped(pull: Omit<PullDraft, 'photographs'>): PullFactsTyped {
  return {
    number: String(pull.number),
    kind: pull.kind,
    paper: pull.paper.words,
    damp: pull.damp === null ? '' : pull.damp ? say('damp') : say('dry'),
    madeAt: localText(pull.madeAt),
    ink: pull.ink?.words ?? '',
    roller: pull.roller?.words ?? '',
    charges: numberText(pull.charges),
    passes: numberText(pull.passes),
    pressureEighths: numberText(pull.pressureEighths),
    packing: pull.packing ?? '',
    who: pull.who ?? '',
    remarks: pull.remarks,
  };
}

/** What is wrong with a fact, by field; null where nothing is. */
export function pullFactTroubles(
  typed: PullFactsTyped,
): Partial<Record<keyof PullFactsTyped, string | null>> {
  return {
    number: numberTrouble(typed.number, 1, 100_000, { needed: true, whole: true }),
    paper:
      typed.paper.trim() === ''
        ? say('It needs a paper: pulls on different papers are never compared.')
        : null,
    charges: numberTrouble(typed.charges, 0, 1000, { whole: true }),
    passes: numberTrouble(typed.passes, 0, 1000, { whole: true }),
    pressureEighths: numberTrouble(typed.pressureEighths, -100, 200),
  };
}

/** The facts as they are saved over those that are kept: what was picked stays picked unless other words are typed. */
export function pullFactsOf(typed: PullFactsTyped, kept: Omit<Pull, 'photographs'>): Partial<PullDraft> {
  const text = (words: string) => (words.trim() === '' ? null : words.trim());
  const thing = (words: string, was: PickedThing | null): PickedThing | null =>
    was && words.trim() === was.words ? was : text(words) === null ? null : { id: null, words: words.trim() };
  return {
    number: typedNumber(typed.number)!,
    kind: typed.kind as PullKind,
    paper: thing(typed.paper, kept.paper)!,
    damp: typed.damp === '' ? null : typed.damp === 'damp',
    madeAt: typed.madeAt === localText(kept.madeAt) ? kept.madeAt : momentOf(typed.madeAt),
    ink: thing(typed.ink, kept.ink),
    roller: thing(typed.roller, kept.roller),
    charges: typedNumber(typed.charges),
    passes: typedNumber(typed.passes),
    pressureEighths: typedNumber(typed.pressureEighths),
    packing: text(typed.packing),
    who: text(typed.who),
    remarks: typed.remarks.trim(),
  };
}
