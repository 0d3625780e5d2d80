import { expect, it } from 'vitest';
import { createNewest } from './newest.ts';

it('lets the oldest go by what they weigh, never the one that was set last', () => {
  const held = createNewest<string>(10, (value) => value.length);
  held.set('a', 'four');
  held.set('b', 'four');
  held.set('a', 'two');
  expect([held.get('a'), held.get('b')]).toEqual(['two', 'four']);
  held.set('c', 'seven..');
  expect([held.has('a'), held.has('b'), held.has('c')]).toEqual([true, false, true]);
  held.set('d', 'longer than all');
  expect([held.has('a'), held.has('c'), held.get('d')]).toEqual([false, false, 'longer than all']);
  held.delete('d');
  held.delete('never set');
  held.set('e', '0123456789');
  expect(held.has('e')).toBe(true);
});
