import { expect, it } from 'vitest';
import { boardCommand } from './boardKeys.ts';

const plain = { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false };

it('pushes by a millimetre or a centimetre, and E goes to the edge of a neighbour', () => {
  const push = (held: object) => boardCommand({ ...plain, key: 'ArrowUp', ...held }, false);
  expect(push({})).toEqual({ do: 'nudge', byMm: [0, -1] });
  expect(push({ shiftKey: true })).toEqual({ do: 'nudge', byMm: [0, -10] });
  expect(push({ altKey: true })).toBeNull();
  expect(boardCommand({ ...plain, key: 'e' }, true)).toEqual({ do: 'to the edge' });
});

it('starts an outline with Enter, then puts points with it', () => {
  expect(boardCommand({ ...plain, key: 'Enter' }, false)).toEqual({ do: 'begin' });
  expect(boardCommand({ ...plain, key: 'Enter' }, true)).toEqual({ do: 'put' });
});

it('goes back and forth with the usual keys, and leaves all others to the page', () => {
  expect(boardCommand({ ...plain, key: 'z', ctrlKey: true }, false)).toEqual({ do: 'undo' });
  expect(boardCommand({ ...plain, key: 'Z', metaKey: true, shiftKey: true }, false)).toEqual({ do: 'redo' });
  expect(boardCommand({ ...plain, key: 'c', ctrlKey: true }, true)).toBeNull();
  expect(boardCommand({ ...plain, key: 'Tab' }, true)).toBeNull();
});
