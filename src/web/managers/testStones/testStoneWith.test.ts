import { expect, it } from 'vitest';
import { testStoneWith } from './testStoneWith.ts';

const bare = { corners: null, repeat: null, flat: null };
const stone = { drawn: { ...bare, photograph: 'first' }, prints: [] };
const of = { to: 'test-stone', testStoneId: 't', repeatOf: null } as const;

it('a photograph that was held for a test stone is put there once, and over no other that came meanwhile', () => {
  const drawn = { id: 'a', kept: 'second', belongs: { ...of, as: 'stone', over: 'first' } } as const;
  expect(testStoneWith(stone, drawn)).toEqual({ drawn: { ...bare, photograph: 'second' }, ruler: null });
  expect(testStoneWith({ ...stone, drawn: { ...bare, photograph: 'second' } }, drawn)).toBe('there');
  expect(testStoneWith({ ...stone, drawn: { ...bare, photograph: 'third' } }, drawn)).toBe('replaced');
  expect(testStoneWith({ ...stone, drawn: null }, drawn)).toBe('replaced');
});

it('a print is added once, and the one set up again goes to it', () => {
  const print = { id: 'b', kept: 'one', belongs: { ...of, as: 'print', over: null } } as const;
  const added = testStoneWith(stone, print);
  expect(added).toMatchObject({ prints: [{ id: 'b', photograph: 'one', repeat: null }] });
  const now = { ...stone, ...(added as Pick<typeof stone, 'prints'>) };
  expect(testStoneWith(now, print)).toBe('there');
  const again = { id: 'c', kept: 'two', belongs: { ...print.belongs, repeatOf: 'b' } } as const;
  expect(testStoneWith(now, again)).toMatchObject({
    prints: [{ id: 'b', photograph: 'one', repeat: 'two' }],
  });
  expect(testStoneWith(now, { ...again, kept: 'one' }), 'the same file').toBe('there');
});
