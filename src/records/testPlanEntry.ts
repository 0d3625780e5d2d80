import type { TestPlan } from './testPlan.ts';
import type { TrialWish } from './trialDesign.ts';

/** What is known here of one level of a treatment. */
export interface LevelFinding {
  readonly treatment: string;
  readonly level: string;
  /** `free`: nothing that a list could know, such as "yes". */
  readonly state: 'known' | 'new' | 'unknown' | 'free';
  /** What it is taken for, such as a medium's or an etch's name; null where nothing is known. */
  readonly takenFor: string | null;
  /** The known level that is written most alike; null where it is known, or nothing comes near. */
  readonly nearest: string | null;
  /** A sentence; null where there is nothing to say. */
  readonly message: string | null;
}

/** A planned test with what follows from it. */
export interface TestPlanEntry extends TestPlan {
  /** What it asks for; null while something stands in the way. */
  readonly wish: TrialWish | null;
  /** What stands in the way of laying it out, in sentences. */
  readonly troubles: readonly string[];
  readonly levels: readonly LevelFinding[];
}
