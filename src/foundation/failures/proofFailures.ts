import type { FailureEntry } from './failureEntry.ts';

/** What may stand in the way at the proof desk. */
export const proofFailures = {
  'pull-number-taken': {
    sentence: 'There is a pull {number} of this work already.',
    remedy: 'Give it the next free number, which is {next}, or correct the other one first.',
  },
  'pull-of-other-work': {
    sentence: 'This is pull {number} of the work {work}, not one of {here}.',
    remedy: 'Open it from its own work: pulls of different works are never compared.',
  },
  'pull-unread': {
    sentence: 'Pull {number} has no measured photograph yet.',
    remedy: 'Photograph it, or wait until its photograph is measured.',
  },
  'stone-photograph-missing': {
    sentence: 'The work {work} has no photograph of its {state} stone with corners set.',
    remedy: 'Attach one to the work or its stone, and set the corners on it.',
  },
  'partner-missing': {
    sentence: 'There is nothing to compare pull {number} with: {why}.',
    remedy: 'Measure the other one first, or choose another.',
  },
  'not-good-to-print': {
    sentence: 'Pull {number} is not good to print yet: {why}.',
    remedy: 'See what is missing, and give it once that is done.',
  },
  'no-longer-good': {
    sentence: 'It was said before that pull {number} is no longer good to print.',
    remedy: 'Give it again, if it holds.',
  },
} as const satisfies Record<string, FailureEntry>;
