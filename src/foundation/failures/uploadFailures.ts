import type { FailureEntry } from './failureEntry.ts';

/** What may stand between a photograph that is sent in pieces and its being kept. */
export const uploadFailures = {
  'upload-gap': {
    sentence: 'The piece begins at byte {from}, but {received} bytes are here.',
    remedy: 'Ask how far the upload has come, and send on from there.',
  },
  'upload-unfinished': {
    sentence: 'Of this photograph {received} of {total} bytes are here.',
    remedy: 'Send the rest, then ask again.',
  },
  'upload-differs': {
    sentence: 'What arrived is not what was told of: its SHA-256 is another.',
    remedy: 'Send the photograph once more from the beginning.',
  },
  'uploads-unfinished': {
    sentence: 'This device has begun {count} photographs and not sent them to their end.',
    remedy: 'Send those first, or wait a day: what is unfinished is let go then.',
  },
  'uploads-too-many': {
    sentence: 'This device has sent as much as one may within a day: {count} photographs or {gigabytes} GB.',
    remedy: 'Wait some hours, or bring the photographs in on the machine that runs Stonetone.',
  },
} as const satisfies Record<string, FailureEntry>;
