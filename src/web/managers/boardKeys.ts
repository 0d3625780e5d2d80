import type { Point } from '../../science/geometry/point.ts';
import { type Stride, strideKey, strides } from './keyStride.ts';

/** What a key asks of the board on which zones are drawn. */
export type BoardCommand =
  | { readonly do: 'push'; readonly byMm: Point }
  | {
      readonly do:
        | 'begin'
        | 'put'
        | 'close'
        | 'leave'
        | 'to the edge'
        | 'next point'
        | 'point before'
        | 'add point'
        | 'remove point'
        | 'undo'
        | 'redo'
        | 'closer'
        | 'farther'
        | 'other stride';
    };

/** What lies in hand on the board: an outline being drawn, a point of a zone, or neither. */
export type InHand = 'outline' | 'point' | 'nothing';

/** The part of a key press that counts. */
export interface BoardKey {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

/**
 * The command of a key on the board; null for keys that are not ours. No letters: they would be the first of a word in
 * one language only.
 * @param inHand Enter puts a point of an outline, or one after the point in hand; with neither it starts an outline.
 * @param stride how far an arrow pushes: a millimetre, about what a drawn edge can be told by on a stone, or a centimetre.
 */
export function boardCommand(event: BoardKey, inHand: InHand, stride: Stride = 'fine'): BoardCommand | null {
  const { key, shiftKey } = event;
  if (event.ctrlKey || event.metaKey) return undoCommand(key.toLowerCase(), shiftKey);
  if (event.altKey) return null;
  const step = strides[stride];
  const arrow = arrows[key];
  if (arrow) return { do: 'push', byMm: [arrow[0] * step, arrow[1] * step] };
  switch (key) {
    case 'Enter':
      return enterCommand(inHand, shiftKey);
    case ' ':
      return { do: 'to the edge' };
    case 'Escape':
      return { do: 'leave' };
    case 'PageDown':
      return { do: 'next point' };
    case 'PageUp':
      return { do: 'point before' };
    case 'Insert':
      return { do: 'add point' };
    case 'Delete':
    case 'Backspace':
      return { do: 'remove point' };
    case '+':
    case '=':
      return { do: 'closer' };
    case '-':
      return { do: 'farther' };
    case strideKey:
      return { do: 'other stride' };
    default:
      return null;
  }
}

function enterCommand(inHand: InHand, shift: boolean): BoardCommand {
  if (inHand === 'outline') return { do: shift ? 'close' : 'put' };
  return { do: inHand === 'point' ? 'add point' : 'begin' };
}

const arrows: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

function undoCommand(key: string, shift: boolean): BoardCommand | null {
  if (key === 'z') return { do: shift ? 'redo' : 'undo' };
  return key === 'y' ? { do: 'redo' } : null;
}
