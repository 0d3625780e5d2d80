import type { FailureEntry } from './failureEntry.ts';

/** What may be wrong with a backup or the place for it. */
export const backupFailures = {
  'backup-unknown': {
    sentence: '{file} is no backup of Stonetone, or its beginning is damaged: {why}.',
    remedy: 'Give a file that stonetone backup wrote.',
  },
  'backup-newer': {
    sentence: 'The backup {file} was written by a newer Stonetone.',
    remedy: 'Use the newer version.',
  },
  'backup-cut-off': {
    sentence: 'The backup {file} ends too early, after {part}.',
    remedy: 'Copy it again from where it was made, or use an earlier backup.',
  },
  'backup-damaged': {
    sentence: 'The backup {file} is damaged: {why}.',
    remedy: 'Copy it again from where it was made, or use an earlier backup.',
  },
  'data-folder-missing': {
    sentence: 'There is no data folder of Stonetone at {folder}: it holds no {file}.',
    remedy: 'Give the folder that stonetone serve uses.',
  },
  'file-taken': {
    sentence: 'There is a file {file} already.',
    remedy: 'Give a name that is free; no file is replaced.',
  },
  'folder-taken': {
    sentence: 'The folder {folder} holds something already: {found}.',
    remedy: 'Give a folder that is empty or not there yet; nothing is replaced.',
  },
  'disk-full': {
    sentence: 'The disk of {folder} takes nothing more ({why}): nothing was left there.',
    remedy: 'Free space on it, or choose a place on another disk.',
  },
} as const satisfies Record<string, FailureEntry>;
