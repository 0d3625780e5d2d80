import type { FailureEntry } from './failureEntry.ts';

/** What may be wrong with what was asked for: arguments, sizes, corners. */
export const argumentFailures = {
  'argument-missing': { sentence: 'The argument {name} is missing.', remedy: 'Give {name}; {example}.' },
  'argument-unknown': {
    sentence: 'The argument {name} is not known.',
    remedy: 'See stonetone help for the arguments.',
  },
  'argument-malformed': { sentence: '{name} could not be read: {why}.', remedy: 'Write it like {example}.' },
  'size-invalid': {
    sentence: 'The size {given} of the work rectangle is not usable: {why}.',
    remedy: 'Give width x height in millimetres, such as 300x400.',
  },
  'corners-malformed': {
    sentence: 'The corners on the {photo} photograph are not four points.',
    remedy: 'Give four points, clockwise from top left, such as "10,10 990,12 985,1300 8,1295".',
  },
  'corners-crossed': {
    sentence: 'The outline through the corners on the {photo} photograph crosses over or folds inward.',
    remedy: 'Set the four corners in order, one after the other round the rectangle.',
  },
  'corners-anticlockwise': {
    sentence: 'The corners on the stone photograph run anticlockwise.',
    remedy: 'Give them clockwise: top left, top right, bottom right, bottom left, as one looks at the stone.',
  },
  'corners-outside': {
    sentence: 'Corner {corner} on the {photo} photograph lies outside the picture ({width} x {height} px).',
    remedy: 'Set every corner inside the picture.',
  },
  'corners-collinear': {
    sentence: 'The corners on the {photo} photograph lie almost on one line.',
    remedy: 'Set the four corners of the work rectangle, not points along one side.',
  },
  'corners-not-found': {
    sentence: 'No rectangle could be found on the {photo} photograph: {why}.',
    remedy: 'Set its four corners by hand.',
  },
  stopped: { sentence: 'The measurement was stopped.', remedy: 'Start it again when you are ready.' },
  'not-found': { sentence: 'There is no {what} here.', remedy: 'Go back to the list and choose again.' },
} as const satisfies Record<string, FailureEntry>;
