import type { FailureEntry } from './failureEntry.ts';

/** What may stand in the way of planning the days. */
export const dayFailures = {
  'studio-not-described': {
    sentence: 'Nobody has said yet when this room is open and who works in it.',
    remedy: 'Enter opening hours and people under People and hours first.',
  },
  'deadline-too-far': {
    sentence: '{by} is more than a year from now.',
    remedy: 'Choose a moment within a year.',
  },
} as const satisfies Record<string, FailureEntry>;
