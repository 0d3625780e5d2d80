import type { KeyboardEvent } from 'react';
import type { BoardHand } from '../../managers/boardHand.ts';
import { boardCommand } from '../../managers/boardKeys.ts';

const stepPx = 40;

/** Keys on a board that is only looked at: arrows move it, plus and minus change how near it is. */
export function viewKey(event: KeyboardEvent, board: BoardHand): boolean {
  const command = boardCommand(event, 'nothing');
  switch (command?.do) {
    case 'push':
      board.pan([-Math.sign(command.byMm[0]) * stepPx, -Math.sign(command.byMm[1]) * stepPx]);
      return true;
    case 'closer':
      board.zoom(1.6);
      return true;
    case 'farther':
      board.zoom(1 / 1.6);
      return true;
    default:
      return false;
  }
}
