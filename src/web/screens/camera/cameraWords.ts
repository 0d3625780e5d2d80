import { figuresInWords } from '../../../words/figuresInWords.ts';
import type { CameraTrouble } from '../../managers/camera/cameraTrouble.ts';
import type { SensesState } from '../../managers/camera/deviceSenses.ts';
import type { Mend } from '../../managers/camera/shotAdvice.ts';
import type { StillFindings, StillReading } from '../../managers/camera/stillFindings.ts';
import { say } from '../../words/say.ts';

/** Said large where nothing is left to mend. */
export const takeItWords = {
  felt: say('Steady, level, even: take it.'),
  unfelt: say('Steady and even: take it.'),
} as const;

/** What to mend in the live view, short enough to be read at arm's length. */
export const mendWords: Readonly<Record<Mend, string>> = {
  'too-light': say('Too light: whites are burnt out.'),
  'too-dark': say('Too dark: give it more light.'),
  glare: say('A lamp shines back: move it.'),
  'left-lighter': say('The left gets more light.'),
  'right-lighter': say('The right gets more light.'),
  'head-lighter': say('The upper part gets more light.'),
  'foot-lighter': say('The lower part gets more light.'),
  'lower-right': say('Hold it more level: lower the right edge.'),
  'lower-left': say('Hold it more level: lower the left edge.'),
  'lower-top': say('Hold it more level: lower the upper edge.'),
  'lower-bottom': say('Hold it more level: lower the lower edge.'),
  'look-up': say('Tip the camera up a little.'),
  'look-down': say('Tip the camera down a little.'),
  'hold-still': say('Hold still.'),
  soft: say('Soft: let it focus again.'),
};

/** What was found on a photograph that is taken, with what to do. */
export function lightFound(mend: Mend, { exposure }: StillReading): string {
  const percent = (share: number) => Math.max(1, Math.round(100 * share));
  const across = Math.round(Math.abs(exposure.leftPercent));
  const along = Math.round(Math.abs(exposure.headPercent));
  switch (mend) {
    case 'too-light':
      return say('Burnt out on {percent} % of the frame: tones there are lost. Give it less light.', {
        percent: percent(exposure.whites),
      });
    case 'too-dark':
      return say('Wholly black on {percent} % of the frame: tones there are lost. Give it more light.', {
        percent: percent(exposure.blacks),
      });
    case 'glare':
      return say('Something shines on {percent} % of the frame: move the lamp, or fan the stone dry.', {
        percent: percent(exposure.glare),
      });
    case 'left-lighter':
      return say('The left gets {across} % more light than the right: set the lamps alike.', { across });
    case 'right-lighter':
      return say('The right gets {across} % more light than the left: set the lamps alike.', { across });
    case 'head-lighter':
      return say('The upper part gets {along} % more light than the lower: set the lamps alike.', { along });
    case 'foot-lighter':
      return say('The lower part gets {along} % more light than the upper: set the lamps alike.', { along });
    default:
      return mendWords[mend];
  }
}

/** What is said of its sharpness. */
export const sharpnessWords: Readonly<Record<StillFindings['sharpness'], string>> = {
  sharp: say('It is sharp.'),
  soft: say('It is soft: hold the camera still, or use the timer.'),
  'softer-than-before': say('It is softer than the one before: let it focus again.'),
  unknown: say('There is too little in it to tell whether it is sharp.'),
};

/** Why there is no live view, and what to do. */
export const troubleWords: Readonly<
  Record<CameraTrouble, { readonly title: string; readonly remedy: string }>
> = {
  'plain-http': {
    title: say('No live view on a plain http address.'),
    remedy: say(
      'Browsers give the camera only to https and to the machine itself. Take it with the device’s own camera here; it is checked afterwards.',
    ),
  },
  'no-camera-here': {
    title: say('This browser gives no camera to a page.'),
    remedy: say('Take it with the device’s own camera, or choose a photograph.'),
  },
  refused: {
    title: say('The camera was refused to this page.'),
    remedy: say('Allow it in the browser’s settings for this address and try again, or choose a photograph.'),
  },
  none: {
    title: say('No camera was found here.'),
    remedy: say('Connect one and try again, or choose a photograph.'),
  },
  busy: {
    title: say('The camera is in use by something else.'),
    remedy: say('Close what uses it and try again, or choose a photograph.'),
  },
  'taken-away': {
    title: say('The camera went away.'),
    remedy: say('Nothing that you kept is lost. Connect it and try again, or choose a photograph.'),
  },
  unopened: {
    title: say('The camera could not be opened.'),
    remedy: say('Try again, or choose a photograph.'),
  },
};

/** What is said of the level where it tells nothing. */
export const unfeltWords: Readonly<Record<Exclude<SensesState, 'felt'>, string>> = {
  waiting: say('Feeling for the level …'),
  'press-needed': say('The level is off until you allow it.'),
  none: say('This device feels no level: judge it by the frame’s edges.'),
  refused: say('The level was refused: judge it by the frame’s edges.'),
};

/** The printed checklist's lines, for a photograph that is taken outside this page. */
export const checklist: readonly string[] = [
  say('Two lamps at 45°, one on each side; no window light.'),
  say('Camera square to it and {far} away or more, 2× lens.', { far: figuresInWords('60 cm') }),
  say('All four corners in the picture, bare ground or clean paper all round.'),
  say('Grey card or chips and a ruler beside it.'),
  say('Exposure and white balance locked; nothing burnt out.'),
  say('Timer on, hands off.'),
];
