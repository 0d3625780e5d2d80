import type { EtchPlan, EtchTable, PlanRequest, TannicSolution } from './etch.ts';
import type { Reading, SecondEtchLine, SecondEtchPlan, SecondEtchZone } from './secondEtch.ts';

/** What a person chooses for a plan; the zones are the work's own. */
export interface PlanChoices {
  readonly tableId: string;
  /** null: the newest. */
  readonly tableVersion: number | null;
  /** The tannic solution by its batch, or as typed; not both. */
  readonly tannicBatchId: string | null;
  readonly tannic: TannicSolution | null;
  /** Id of an attached photograph with corners, by whose tones washes that span deposits are split; null or left out: unsplit. */
  readonly splitFrom?: string | null;
  readonly people: 1 | 2;
  readonly filmMm: number;
  /** 2: the strongest etch after all weaker ones are lifted. */
  readonly stages?: 1 | 2;
  /** The depth for which the gaps of the table hold, mm; null or left out: any. */
  readonly gapFilmMm?: number | null;
  readonly layMm2PerSecond: number;
  readonly guardMm: number;
}

/** A plan as the list shows it. */
export interface PlanSummary {
  readonly id: string;
  readonly createdAt: string;
  /** The version of the work that it was made from. */
  readonly workVersion: number;
  readonly table: { readonly id: string; readonly version: number; readonly name: string };
  readonly feasible: boolean | 'unknown';
}

/** A first etch's plan with all that it was made from, as it was then. */
export interface KeptPlan extends PlanSummary {
  readonly workId: string;
  readonly tannicBatchId: string | null;
  readonly request: PlanRequest;
  readonly plan: EtchPlan;
}

/** What a person chooses for a second etch. */
export interface SecondEtchChoices {
  readonly tableId: string;
  readonly tableVersion: number | null;
  readonly line: SecondEtchLine;
  /** A zone that is left out counts as not read. */
  readonly readings: readonly { readonly zone: string; readonly reading: Reading }[];
  /** The first etch's plan that was followed; null: the work's newest, where there is one. */
  readonly planId: string | null;
}

/** A second etch's plan with all that it was made from. */
export interface KeptSecondEtch {
  readonly id: string;
  readonly workId: string;
  readonly createdAt: string;
  readonly workVersion: number;
  readonly table: EtchTable;
  /** null where no first etch was planned here: strengths are then unknown. */
  readonly planId: string | null;
  readonly zones: readonly SecondEtchZone[];
  readonly plan: SecondEtchPlan;
}
