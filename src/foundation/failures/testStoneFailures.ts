import type { FailureEntry } from './failureEntry.ts';

/** What may stand in the way of reading a test stone. */
export const testStoneFailures = {
  'patches-too-many': {
    sentence: '{count} patches are more than one test stone takes; {most} is the most.',
    remedy: 'Lay fewer rows, columns or steps, or share them between two stones.',
  },
  'patches-none': {
    sentence: '{name} has no patches to read.',
    remedy: 'Lay a grid over the stone, or enter patches one by one.',
  },
  'test-photograph-missing': {
    sentence: '{name} can’t be read yet: there is no photograph of {what}.',
    remedy: 'Photograph it with all four corners in the picture, and add it here.',
  },
  'patches-malformed': {
    sentence: 'The list of patches could not be used: {why}.',
    remedy: 'Mend it there; docs/formats.md shows the form.',
  },
  'test-plan-made': {
    sentence: 'Test stones were made of {what}: what they were planned as stays as it was.',
    remedy: 'Copy the plan and change the copy.',
  },
  'test-plan-not-ready': {
    sentence: 'No stone can be made of this plan yet: {why}.',
    remedy: 'Put that right in the plan, then make its stones.',
  },
  'list-sealed': {
    sentence: 'Who got what on {what} is sealed: {untold} of its patches have no verdict yet.',
    remedy: 'Read them, by the camera, by hand or by eye; or open the list, which is logged and shown.',
  },
  'test-stone-at-bench': {
    sentence: '{what} has its work at the bench already.',
    remedy: 'Go on with that one; take it off the test stone first if it is the wrong one.',
  },
} as const satisfies Record<string, FailureEntry>;
