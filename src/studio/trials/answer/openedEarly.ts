import type { ListState } from '../../../records/testStone.ts';
import type { AuditFinding, TestStoneAnswer } from '../../../records/testStoneAnswer.ts';

/** The list of one stone that was opened by an act of its own. */
export type OpenedList = NonNullable<ListState['opened']> & {
  readonly stone: string;
  /** Verdicts put right by hand since. */
  readonly corrected: number;
};

/** An answer that says, first of all, which lists were opened before their stones were read. */
export function withOpenings(answer: TestStoneAnswer, lists: readonly OpenedList[]): TestStoneAnswer {
  const early = lists.filter(({ untold }) => untold > 0);
  if (early.length === 0) return answer;
  const findings = early.map(findingOf);
  return {
    ...answer,
    words: [...findings.map(({ message }) => message), ...answer.words],
    audit: [...findings, ...answer.audit],
    openQuestions: [
      ...answer.openQuestions,
      ...findings.map(({ message, test }) => ({ question: message, test: test! })),
    ],
  };
}

function findingOf({ stone, at, by, why, untold, corrected }: OpenedList): AuditFinding {
  const when = `${at.slice(0, 10)}, ${at.slice(11, 16)} UTC`;
  const since =
    corrected === 0
      ? ''
      : ` Since then ${corrected === 1 ? 'one verdict was' : `${corrected} verdicts were`} put right by hand.`;
  return {
    code: 'opened-early',
    weight: 'caution',
    factors: [],
    message: `Opened before it was read: who got what on ${stone} was shown on ${when}, to ${by}, when ${untold} ${untold === 1 ? 'patch' : 'patches'} had no verdict (“${why}”).${since}`,
    test: `Have ${stone} read by eye by somebody who has not seen the list.`,
  };
}
