import type { ExpectedTime } from './bench.ts';
import type { KeptPlan } from './keptPlan.ts';
import type { LineStage } from './run.ts';

/** What some patches or strips get in one stage. */
export interface CourseLine {
  /** The level, such as "gum alone"; of the stage itself where nothing is varied in it. */
  readonly what: string;
  /** Strips by their names, patches by their codes. */
  readonly where: readonly string[];
}

/** One stage of a test stone's line, in order. */
export interface CourseStage {
  readonly stage: LineStage;
  readonly name: string;
  readonly expected: ExpectedTime | null;
  readonly endSign: string;
  /** Who gets what in it; empty: all patches alike. */
  readonly lines: readonly CourseLine[];
}

/** Every step of a test stone from drawing to the print that it is read from. */
export interface TestCourse {
  readonly schema: 'stonetone/test-course/1';
  readonly testStone: string;
  readonly name: string;
  /** For whoever etches (no media) or whoever draws (no etches). */
  readonly for: 'etch' | 'draw';
  readonly stages: readonly CourseStage[];
  /** What is varied in no stage that is known here: to be given as the list says. */
  readonly elsewhere: readonly (CourseLine & { readonly treatment: string })[];
  /** The newest etch plan of its work; null until it is ready for the bench, and for whoever draws. */
  readonly plan: KeptPlan | null;
}
