import type { WarningCode } from '../../records/comparison.ts';

export interface WarningWords {
  /** What was found, as a short heading. */
  readonly what: string;
  /** What to do about it at the camera or the bench, in one sentence. */
  readonly toDo: string;
}

const words: Readonly<Record<WarningCode, WarningWords>> = {
  overexposed: {
    what: 'Burnt-out whites',
    toDo: 'Photograph again with less exposure, so that the white paper is light grey, not blank.',
  },
  blurred: {
    what: 'Out of focus or shaken',
    toDo: 'Photograph again with the timer, the camera on a stand and the focus on the drawing.',
  },
  partial: {
    what: 'Only part of the stone is on this sheet',
    toDo: 'What the sheet did not cover is left blank here; photograph the whole print if there is more of it.',
  },
  glare: {
    what: 'A lamp shines back',
    toDo: 'Set both lamps at 45 degrees, let the sheet dry, or put crossed polarisers on.',
  },
  cast: {
    what: 'The light changes colour across the picture',
    toDo: 'Shut out the window and use two lamps of one kind.',
  },
  'few-pixels': {
    what: 'Too few pixels for fine marks',
    toDo: 'Fill the frame with the work rectangle, or take the picture at full size.',
  },
  'chips-misfit': {
    what: 'The grey chips disagree',
    toDo: 'Check the reflectances that were entered, and that no shadow or fingerprint lies on a chip.',
  },
  'scum-local-only': {
    what: 'Only scum in patches can be seen',
    toDo: 'An even tint hides in the ground: photograph the print with clean paper showing all round.',
  },
  'no-solid': {
    what: 'No solid to compare strengths by',
    toDo: 'Draw a small solid in the margin, or give the darkness of a full film of ink.',
  },
  'standard-curve': {
    what: 'No grey chips',
    toDo: 'The camera was taken at its word, so the ranges are wider: lay a grey card with chips beside the work.',
  },
  'corners-found': {
    what: 'The corners were found, not given',
    toDo: 'Look whether they sit on the corners of the work rectangle, and set them by hand where they do not.',
  },
};

/** A warning in plain words with what to do. Total over all codes. */
export function warningAdvice(code: WarningCode): WarningWords {
  return words[code];
}
