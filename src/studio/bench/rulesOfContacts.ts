import type { LineStage } from '../../records/run.ts';
import { type ContactRule, contactRulesOf, type EtchesPlanned } from '../etch/contactRules.ts';
import { laidRows } from '../etch/laidRows.ts';
import { lastEtch, type StageTold } from './stagesDone.ts';

type LaidRows = ReadonlyMap<string, ReturnType<typeof laidRows>[number]>;

/** What a run's contacts go by, and what their places are called. */
export interface RulesOfContacts {
  /** Whether the first etch was planned. */
  readonly planned: boolean;
  /** The places of its plan. */
  readonly rows: LaidRows;
  ruleOf(contact: { readonly place: string; readonly stage: LineStage }, ms: number): ContactRule | undefined;
  /** A place's name, by the plan of the etch that was begun last where the first one's has none. */
  namesIn(stages: readonly StageTold[]): (place: string) => string;
}

/** The rules of every etch that was planned for a work, to be asked by place, stage and moment. */
export function rulesOfContacts(planned: EtchesPlanned): RulesOfContacts {
  const rulesAt = contactRulesOf(planned);
  // a later etch shares the first one's letters and names, not its times
  const rows = new Map((planned.first ? laidRows(planned.first) : []).map((one) => [one.row.id, one]));
  return {
    planned: planned.first !== null,
    rows,
    ruleOf: ({ place, stage }, ms) => rulesAt(stage, ms).find(({ id }) => id === place),
    namesIn(stages) {
      const latest = rulesAt(lastEtch(stages)?.stage ?? 'first-etch', Number.POSITIVE_INFINITY);
      return (place) => rows.get(place)?.name ?? latest.find(({ id }) => id === place)?.name ?? place;
    },
  };
}
