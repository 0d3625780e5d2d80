import type { DeskState } from '../../managers/zoneDesk.ts';

/** What can be done on the board now, in a line under it, for a finger (`coarse`) or for mouse and keys. */
export function boardWords(state: DeskState, coarse: boolean): string {
  return coarse ? fingerWords(state) : keyWords(state);
}

function fingerWords({ drawing, picked }: DeskState): string {
  if (drawing.outline)
    return drawing.outline.length < 3
      ? 'Press where the outline goes, point by point; slide to set a point exactly. Two fingers move the stone.'
      : 'Close it on its first point, or with “Close it”. “Take back” takes the last point away.';
  if (picked)
    return 'Drag a point; press on a side to add one; drag the letter to move the zone whole. Two fingers bring it closer.';
  return 'Press a zone to take it in hand. One finger moves the stone, two bring it closer.';
}

function keyWords({ drawing, picked, point }: DeskState): string {
  if (drawing.outline)
    return drawing.outline.length < 3
      ? 'Press where the outline goes, point by point. Arrow keys move the cross (1 mm, Shift 10, Alt 0.1), Enter puts a point.'
      : 'Close it on its first point, or with C. Delete takes the last point back, Escape leaves it.';
  if (picked && point !== null)
    return 'Arrow keys move the point by 1 mm (Shift 10, Alt 0.1). Page Down: the next. A adds one, Delete takes it away.';
  if (picked)
    return 'Drag a point; press on a side to add one; drag the letter to move the zone whole. Page Down takes the first point.';
  return 'Press a zone to take it in hand. Enter, or “Draw a zone”, starts an outline. Drag the stone to move it.';
}
