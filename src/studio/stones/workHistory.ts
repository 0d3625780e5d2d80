import { type HistoryFact, type PastFact, type WorkStage, workStages } from '../../records/work.ts';

/** The stage from which on each fact belongs to the past, in the order in which a colleague would ask. */
const settledAt: Readonly<Record<HistoryFact, WorkStage>> = {
  grain: 'grained',
  'drawn-on': 'drawn',
  media: 'drawn',
  powder: 'first-etch',
  'first-etch': 'first-etch',
  'first-etch-contact': 'first-etch',
  'last-gummed': 'first-etch',
  rest: 'washed-out',
  washout: 'washed-out',
  base: 'washed-out',
  'roll-up-ink': 'rolled-up',
  pulls: 'trial-proofs',
  'second-etch': 'second-etch',
};

/** What can be asked about a work that is entered at a stage: nothing that has not happened yet. */
export function factsBefore(stage: WorkStage): readonly HistoryFact[] {
  const reached = workStages.indexOf(stage);
  const facts = Object.keys(settledAt) as HistoryFact[];
  return facts.filter((fact) => workStages.indexOf(settledAt[fact]) <= reached);
}

/** One entry for every fact before the stage: as given, else unknown. Facts after the stage are left out. */
export function wholeHistory(stage: WorkStage, given: readonly PastFact[]): readonly PastFact[] {
  return factsBefore(stage).map((fact) => ({
    fact,
    value: given.find((known) => known.fact === fact)?.value ?? null,
  }));
}
