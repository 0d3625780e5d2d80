import { say } from '../../words/say.ts';

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
