import type { DeskState } from '../../managers/zoneDesk.ts';
import { say } from '../../words/say.ts';

/** What is drawn on a board: zones of a work, areas of its proofs, or patches of a test stone. */
export type BoardThing = 'zone' | 'area' | 'patch';

const oneOf: Readonly<Record<BoardThing, string>> = {
  zone: say('a zone'),
  area: say('an area'),
  patch: say('a patch'),
};

/** What a board shows, for those who don’t see it. */
export function boardLabel(stone: string, thing: BoardThing): string {
  switch (thing) {
    case 'zone':
      return say('{stone} from above, with its zones', { stone });
    case 'area':
      return say('{stone} from above, with its areas', { stone });
    case 'patch':
      return say('{stone} from above, with its patches', { stone });
  }
}

/** What can be done on the board now, in a line under it, for a finger (`coarse`) or for mouse and keys. */
export function boardWords(state: DeskState, coarse: boolean, thing: BoardThing): string {
  return coarse ? fingerWords(state, thing) : keyWords(state, thing);
}

function fingerWords({ drawing, picked }: DeskState, thing: BoardThing): string {
  if (drawing.outline)
    return drawing.outline.length < 3
      ? say(
          'Press where the outline goes, point by point; slide to set a point exactly. Two fingers move the stone.',
        )
      : say('Close it on its first point, or with “Close it”. “Take back” takes the last point away.');
  if (picked)
    return say(
      'Drag a point; press on a side to add one; drag its letter to move it whole. Two fingers bring it closer.',
    );
  return say('Press {oneOf} to take it in hand. One finger moves the stone, two bring it closer.', {
    oneOf: oneOf[thing],
  });
}

function keyWords({ drawing, picked, point }: DeskState, thing: BoardThing): string {
  if (drawing.outline)
    return drawing.outline.length < 3
      ? say(
          'Press where the outline goes, point by point. Arrow keys push the cross, 0 changes how far; the space bar takes it to the nearest zone’s edge; Enter puts a point.',
        )
      : say(
          'Close it on its first point, or with Shift and Enter. Delete takes the last point back, Escape leaves it.',
        );
  if (picked && point !== null)
    return say(
      'Arrow keys push the point, 0 changes how far; the space bar takes it to the nearest zone’s edge. Page Down: the next. Enter adds one after it, Delete takes it away.',
    );
  if (picked)
    return say(
      'Drag a point; press on a side to add one; drag its letter to move it whole. Page Down takes the first point.',
    );
  return say(
    'Press {oneOf} to take it in hand. Enter, or the button beside, starts an outline. Drag the stone to move it.',
    { oneOf: oneOf[thing] },
  );
}
