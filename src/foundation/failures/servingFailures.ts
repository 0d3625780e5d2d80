import type { FailureEntry } from './failureEntry.ts';

/** What may stop the program from serving, or a request from being taken. */
export const servingFailures = {
  'host-refused': {
    sentence: 'The address {host} is not one this program answers to.',
    remedy: 'Open the address that the program printed when it started.',
  },
  'origin-refused': {
    sentence: 'A page from {origin} may not use this program.',
    remedy: 'Open the address that the program printed when it started.',
  },
  'host-not-loopback': {
    sentence: 'The address {host} would open the program to other machines.',
    remedy: 'Use 127.0.0.1.',
  },
  'upload-too-large': {
    sentence: '{file} is larger than {limit} MB.',
    remedy: 'Export the photograph at a smaller size or a lower JPEG quality.',
  },
  'upload-malformed': {
    sentence: 'The upload could not be read: {why}.',
    remedy: 'Send one photograph as the field "photograph" of a multipart form.',
  },
  'body-malformed': {
    sentence: 'What was sent could not be read: {why}.',
    remedy: 'Correct the field and send again.',
  },
  'body-too-large': {
    sentence: 'What was sent is larger than {limit} MB.',
    remedy: 'Send fewer zones or chips.',
  },
  'listeners-too-many': {
    sentence: 'Too many pages listen for changes already.',
    remedy: 'Close some of the pages that show this program.',
  },
  'data-folder-unusable': {
    sentence: 'The data folder {folder} cannot be used: {why}.',
    remedy: 'Choose another folder with --data, or free space and rights on this one.',
  },
  'storage-full': {
    sentence: 'The disk takes nothing more ({why}): this was not kept.',
    remedy: 'Free space on the disk, then send it again; all that was acknowledged is there.',
  },
  'data-folder-busy': {
    sentence: 'The data folder {folder} is in use by another running Stonetone.',
    remedy: 'Use the one that runs already, or stop it first.',
  },
  'database-damaged': {
    sentence: 'The database in {folder} is damaged: {why}.',
    remedy:
      'Leave it as it is, and put your last good backup into another folder: stonetone restore FILE --data DIR.',
  },
  'database-newer': {
    sentence: 'The database in {folder} was written by a newer Stonetone.',
    remedy: 'Start the newer version, or choose another folder with --data.',
  },
  'port-in-use': {
    sentence: 'Port {port} is in use by another program.',
    remedy: 'Choose another with --port, or 0 for any free one.',
  },
  internal: {
    sentence: 'Something went wrong inside: {why}.',
    remedy: 'Try again; if it stays, tell whoever looks after Stonetone here.',
  },
} as const satisfies Record<string, FailureEntry>;
