import { endSigns } from '../../../studio/etch/endSigns.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** What to lay, with what and how much where that is known. */
export function layWords(name: string, etch: string | null): string {
  return etch === null ? say('Lay {name}', { name }) : say('Lay {name} with {etch}', { name, etch });
}

export function moveWords(name: string): string {
  return say('Move {name}', { name });
}

export function liftWords(name: string): string {
  return say('Lift {name}', { name });
}

/** How the end of it is seen; a move has none, but what is seen on the way. */
export function signWords(action: keyof typeof endSigns): string {
  const sign = told(endSigns[action]);
  return action === 'move' ? say('Look: {sign}.', { sign }) : untilWords(sign);
}

/** @param sign what ends it, in the words of the page */
export function untilWords(sign: string): string {
  return say('Until: {sign}.', { sign });
}
