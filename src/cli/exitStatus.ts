import type { Failure } from '../foundation/failure.ts';
import type { FailureCode } from '../foundation/failureRegistry.ts';

/** Done; also with warnings, and for plans that can't be kept. */
export const exitDone = 0;
/** Refused: unmirrored or no match. The record is written, nothing in it measured. */
export const exitRefused = 3;

/** What a command ends with for each failure: 2 for bad arguments or input, 1 for what is not the person's doing. */
const statusOf: Record<FailureCode, 1 | 2> = {
  'argument-missing': 2,
  'argument-unknown': 2,
  'argument-malformed': 2,
  'size-invalid': 2,
  'corners-malformed': 2,
  'corners-crossed': 2,
  'corners-anticlockwise': 2,
  'corners-outside': 2,
  'corners-collinear': 2,
  'corners-not-found': 2,
  'file-missing': 2,
  'file-unreadable': 2,
  'file-empty': 2,
  'picture-unknown-kind': 2,
  'picture-damaged': 2,
  'picture-cmyk': 2,
  'picture-animated': 2,
  'picture-too-large': 2,
  'picture-coding': 2,
  'file-too-large': 2,
  'picture-too-small': 2,
  'zones-malformed': 2,
  'zone-outside': 2,
  'zone-self-crossing': 2,
  'zone-degenerate': 2,
  'zone-duplicate': 2,
  'chips-malformed': 2,
  'chip-outside': 2,
  'output-unwritable': 2,
  cancelled: 1,
  'not-found': 2,
  'stale-save': 2,
  archived: 2,
  'reference-unknown': 2,
  'name-taken': 2,
  'stone-in-use': 2,
  'stone-too-small': 2,
  'rectangle-off-stone': 2,
  'medium-in-use': 2,
  'medium-fixed': 2,
  'table-fixed': 2,
  'host-refused': 2,
  'origin-refused': 2,
  'host-not-loopback': 2,
  'upload-too-large': 2,
  'upload-malformed': 2,
  'body-malformed': 2,
  'body-too-large': 2,
  'photograph-unknown': 2,
  'listeners-too-many': 1,
  'photographs-same': 2,
  'measuring-crashed': 1,
  'data-folder-unusable': 2,
  'storage-full': 2,
  'data-folder-busy': 2,
  'database-damaged': 2,
  'database-newer': 2,
  'port-in-use': 2,
  internal: 1,
  'plan-malformed': 2,
  'stone-impossible': 2,
  'zone-off-stone': 2,
  'zone-id-reserved': 2,
  'table-malformed': 2,
  'mixture-malformed': 2,
  'mixture-impossible': 2,
  'series-malformed': 2,
  'lift-malformed': 2,
};

/** The exit status that a failure ends a command with. */
export function exitStatus(failure: Failure): 1 | 2 {
  return statusOf[failure.code];
}
