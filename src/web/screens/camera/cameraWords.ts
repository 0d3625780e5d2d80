import type { CameraTrouble } from '../../managers/camera/cameraTrouble.ts';
import type { SensesState } from '../../managers/camera/deviceSenses.ts';
import type { Mend } from '../../managers/camera/shotAdvice.ts';
import type { StillFindings, StillReading } from '../../managers/camera/stillFindings.ts';

/** Said large where nothing is left to mend. */
export const takeItWords = {
  felt: 'Steady, level, even: take it.',
  unfelt: 'Steady and even: take it.',
} as const;

/** What to mend in the live view, short enough to be read at arm's length. */
export const mendWords: Readonly<Record<Mend, string>> = {
  'too-light': 'Too light: whites are burnt out.',
  'too-dark': 'Too dark: give it more light.',
  glare: 'A lamp shines back: move it.',
  'left-lighter': 'The left gets more light.',
  'right-lighter': 'The right gets more light.',
  'head-lighter': 'The upper part gets more light.',
  'foot-lighter': 'The lower part gets more light.',
  'lower-right': 'Lower the right edge.',
  'lower-left': 'Lower the left edge.',
  'lower-top': 'Lower the upper edge.',
  'lower-bottom': 'Lower the lower edge.',
  'look-up': 'Tip the camera up a little.',
  'look-down': 'Tip the camera down a little.',
  'hold-still': 'Hold still.',
  soft: 'Soft: let it focus again.',
};

/** What was found on a photograph that is taken, with what to do. */
export function lightFound(mend: Mend, { exposure }: StillReading): string {
  const percent = (share: number) => Math.max(1, Math.round(100 * share));
  const across = Math.round(Math.abs(exposure.leftPercent));
  const along = Math.round(Math.abs(exposure.headPercent));
  switch (mend) {
    case 'too-light':
      return `Burnt out on ${percent(exposure.whites)} % of the frame: tones there are lost. Give it less light.`;
    case 'too-dark':
      return `Wholly black on ${percent(exposure.blacks)} % of the frame: tones there are lost. Give it more light.`;
    case 'glare':
      return `Something shines on ${percent(exposure.glare)} % of the frame: move the lamp, or fan the stone dry.`;
    case 'left-lighter':
      return `The left gets ${across} % more light than the right: set the lamps alike.`;
    case 'right-lighter':
      return `The right gets ${across} % more light than the left: set the lamps alike.`;
    case 'head-lighter':
      return `The upper part gets ${along} % more light than the lower: set the lamps alike.`;
    case 'foot-lighter':
      return `The lower part gets ${along} % more light than the upper: set the lamps alike.`;
    default:
      return mendWords[mend];
  }
}

/** What is said of its sharpness. */
export const sharpnessWords: Readonly<Record<StillFindings['sharpness'], string>> = {
  sharp: 'It is sharp.',
  soft: 'It is soft: hold the camera still, or use the timer.',
  'softer-than-before': 'It is softer than the one before: let it focus again.',
  unknown: 'There is too little in it to tell whether it is sharp.',
};

/** Why there is no live view, and what to do. */
export const troubleWords: Readonly<
  Record<CameraTrouble, { readonly title: string; readonly remedy: string }>
> = {
  'plain-http': {
    title: 'No live view on a plain http address.',
    remedy:
      'Browsers give the camera only to https and to the machine itself. Take it with the device’s own camera here; it is checked afterwards.',
  },
  'no-camera-here': {
    title: 'This browser gives no camera to a page.',
    remedy: 'Take it with the device’s own camera, or choose a photograph.',
  },
  refused: {
    title: 'The camera was refused to this page.',
    remedy: 'Allow it in the browser’s settings for this address and try again, or choose a photograph.',
  },
  none: {
    title: 'No camera was found here.',
    remedy: 'Connect one and try again, or choose a photograph.',
  },
  busy: {
    title: 'The camera is in use by something else.',
    remedy: 'Close what uses it and try again, or choose a photograph.',
  },
  'taken-away': {
    title: 'The camera went away.',
    remedy: 'Nothing that you kept is lost. Connect it and try again, or choose a photograph.',
  },
  failed: {
    title: 'The camera could not be opened.',
    remedy: 'Try again, or choose a photograph.',
  },
};

/** What is said of the level where it tells nothing. */
export const unfeltWords: Readonly<Record<Exclude<SensesState, 'felt'>, string>> = {
  waiting: 'Feeling for the level …',
  'press-needed': 'The level is off until you allow it.',
  none: 'This device feels no level: judge it by the frame’s edges.',
  refused: 'The level was refused: judge it by the frame’s edges.',
};

/** The printed checklist's lines, for a photograph that is taken outside this page. */
export const checklist: readonly string[] = [
  'Two lamps at 45°, one on each side; no window light.',
  'Camera square to it and 60 cm away or more, 2× lens.',
  'All four corners in the picture, bare ground or clean paper all round.',
  'Grey card or chips and a ruler beside it.',
  'Exposure and white balance locked; nothing burnt out.',
  'Timer on, hands off.',
];
