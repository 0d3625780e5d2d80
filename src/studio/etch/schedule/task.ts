/** One area to etch, as the schedule sees it. Whole seconds. */
export interface Task {
  readonly zone: string;
  /** How long laying takes one person without a break. */
  readonly laySeconds: number;
  /** Contact from the end of laying to the end of lifting. */
  readonly lowSeconds: number;
  readonly wantedSeconds: number | null;
  readonly highSeconds: number | null;
  /** The longest it may lie untouched, from the end of one touch to the start of the next. */
  readonly gapSeconds: number;
  /** Weakest first: 0 ground, then rising; lifting goes light → dark and ends with the ground. */
  readonly strengthRank: number;
}

/** How long one touch takes. A moving stroke about 3 s, lifting about 5 s: common practice, no source. */
export interface TouchTimes {
  readonly moveSeconds: number;
  readonly liftSeconds: number;
}

/** About 3 s for a moving stroke and 5 s to lift a zone: common practice without source. */
export const touchTimes: TouchTimes = { moveSeconds: 3, liftSeconds: 5 };

/**
 * Order in which a zone is lifted: light, middle, dark, and the ground, on longest, at the end.
 * Equal numbers may be lifted in any order.
 */
export function liftRank(task: Task): number {
  return task.strengthRank === 0 ? Number.POSITIVE_INFINITY : task.strengthRank;
}
