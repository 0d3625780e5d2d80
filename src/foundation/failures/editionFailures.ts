import type { FailureEntry } from './failureEntry.ts';

/** What may be wrong with an edition and its prints. */
export const editionFailures = {
  'edition-malformed': {
    sentence: 'The edition to plan could not be read: {why}.',
    remedy: 'Mend it there; docs/formats.md shows the form.',
  },
  'number-given-twice': {
    sentence: '{label} is given twice: to print {one} and to print {other}.',
    remedy: 'A number is one print: give one of them another.',
  },
  'curation-impossible': {
    sentence: 'The prints can’t be given so: {why}.',
    remedy: 'Change that print, then save again.',
  },
} as const satisfies Record<string, FailureEntry>;
