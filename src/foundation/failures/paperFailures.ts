import type { FailureEntry } from './failureEntry.ts';

/** What may be wrong with papers that come in or go out. */
export const paperFailures = {
  'protocol-malformed': {
    sentence: 'This is no protocol that can be read here: {why}.',
    remedy: 'Ask the studio that sent it for the file anew; docs/formats.md shows the form.',
  },
  'protocol-newer': {
    sentence: 'This protocol is of a form that this version does not know: {schema}.',
    remedy: 'Use a newer version, or ask the studio that sent it for its PDF.',
  },
} as const satisfies Record<string, FailureEntry>;
