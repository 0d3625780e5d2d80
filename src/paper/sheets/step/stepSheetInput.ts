import type { EtchPlan, PlanRequest } from '../../../records/etch.ts';
import type { Paper } from '../../../records/paper.ts';

export interface StepSheetInput {
  readonly plan: EtchPlan;
  readonly request: PlanRequest;
  /** The work and its stone, as people call them. */
  readonly title: string;
  /** The day of planning as people read it, such as "26 Nov 2026". */
  readonly dateText: string;
  readonly paper: Paper;
  /** Kept in the file's own data; the same date and input give the same bytes. */
  readonly createdAt: Date;
}

/** How large a sheet is set. */
export interface SheetLook {
  /** Multiplies every size. */
  readonly scale: number;
  readonly widthPt: number;
}
