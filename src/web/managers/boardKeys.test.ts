import { expect, it } from 'vitest';
import { boardCommand } from './boardKeys.ts';
import type { Stride } from './keyStride.ts';

const plain = { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false };

it('pushes by a millimetre or a centimetre, and the space bar goes to the edge of a neighbour', () => {
  const push = (held: object, stride?: Stride) =>
    boardCommand({ ...plain, key: 'ArrowUp', ...held }, 'nothing', stride);
  expect(push({})).toEqual({ do: 'push', byMm: [0, -1] });
  expect(push({}, 'coarse')).toEqual({ do: 'push', byMm: [0, -10] });
  expect(boardCommand({ ...plain, key: '0' }, 'outline')).toEqual({ do: 'other stride' });
  expect(push({ altKey: true })).toBeNull();
  expect(boardCommand({ ...plain, key: ' ' }, 'outline')).toEqual({ do: 'to the edge' });
});

it('starts an outline with Enter, puts points with it, and closes with Shift', () => {
  expect(boardCommand({ ...plain, key: 'Enter' }, 'nothing')).toEqual({ do: 'begin' });
  expect(boardCommand({ ...plain, key: 'Enter' }, 'outline')).toEqual({ do: 'put' });
  expect(boardCommand({ ...plain, key: 'Enter' }, 'point')).toEqual({ do: 'add point' });
  expect(boardCommand({ ...plain, key: 'Enter', shiftKey: true }, 'outline')).toEqual({ do: 'close' });
});

it('goes back and forth with the usual keys, and leaves all others to the page', () => {
  expect(boardCommand({ ...plain, key: 'z', ctrlKey: true }, 'nothing')).toEqual({ do: 'undo' });
  expect(boardCommand({ ...plain, key: 'Z', metaKey: true, shiftKey: true }, 'nothing')).toEqual({
    do: 'redo',
  });
  expect(boardCommand({ ...plain, key: 'c', ctrlKey: true }, 'outline')).toBeNull();
  expect(boardCommand({ ...plain, key: 'c' }, 'outline')).toBeNull();
  expect(boardCommand({ ...plain, key: 'Tab' }, 'outline')).toBeNull();
});
