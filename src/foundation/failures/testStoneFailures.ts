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
} as const satisfies Record<string, FailureEntry>;
