import type { Paper } from '../../records/paper.ts';
import type { TestStoneFindings } from '../../records/testStoneAnswer.ts';
import type { TrialWish } from '../../records/trialDesign.ts';
import type { WordChoice } from '../../records/wordChoice.ts';

/** What the thread of trials is asked for: the design whole, its layout alone, or the tracing sheet of that. */
export type TrialTask =
  | {
      readonly ask: 'design';
      readonly wish: TrialWish;
      /** What this room read, by which its scatter is told. */
      readonly findings: readonly TestStoneFindings[];
    }
  | { readonly ask: 'layout'; readonly wish: TrialWish }
  | {
      readonly ask: 'tracing';
      readonly wish: TrialWish;
      readonly paper: Paper;
      readonly createdAt: Date;
      readonly words: WordChoice;
    };
