import type { Edge } from '../../records/stone.ts';
import type { HistoryFact, WorkInput, WorkStage } from '../../records/work.ts';
import { factsBefore } from '../../studio/stones/workHistory.ts';

/** A work about to be started, as typed. */
export interface WorkToStart {
  readonly title: string;
  readonly stoneId: string;
  readonly head: Edge;
  readonly begins: 'new' | 'halfway';
  readonly stage: WorkStage;
  readonly gummed: 'yes' | 'no' | 'unknown';
  /** What was typed about the past; facts that lie after the stage stay typed but are not sent. */
  readonly facts: Partial<Record<HistoryFact, string>>;
}

export const emptyWorkToStart: WorkToStart = {
  title: '',
  stoneId: '',
  head: 'top',
  begins: 'new',
  stage: 'first-etch',
  gummed: 'unknown',
  facts: {},
};

/** What is still missing; null when it can be started. */
export function missingOfWork({ title, stoneId }: WorkToStart): 'stone' | 'title' | null {
  if (stoneId === '') return 'stone';
  return title.trim() === '' ? 'title' : null;
}

/** The work as the server takes it: of its past only what was typed and has happened; the rest is unknown. */
export function workInputOf(
  work: WorkToStart,
): Pick<WorkInput, 'title' | 'stoneId' | 'origin' | 'head' | 'note'> {
  const { title, stoneId, head, begins, stage, gummed, facts } = work;
  const told = factsBefore(stage).flatMap((fact) => {
    const value = facts[fact]?.trim() ?? '';
    return value === '' ? [] : [{ fact, value }];
  });
  return {
    title: title.trim(),
    stoneId,
    head,
    note: '',
    origin: begins === 'new' ? { kind: 'new' } : { kind: 'halfway', stage, gummed, history: told },
  };
}
