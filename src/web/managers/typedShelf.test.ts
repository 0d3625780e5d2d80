import { expect, it } from 'vitest';
import { typedFromShelf, typedToShelf } from './typedShelf.ts';

function shelf(content: Record<string, string> = {}) {
  const kept = new Map(Object.entries(content));
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  };
}

const empty = { name: '', width: '' };

it('gives back what was typed, and nothing once it is taken off', () => {
  const wood = shelf();
  typedToShelf(wood, 'new stone', { name: 'S-07', width: '400' });
  expect(typedFromShelf(wood, 'new stone', empty)).toEqual({ name: 'S-07', width: '400' });
  expect(typedFromShelf(wood, 'new batch', empty)).toEqual(empty);
  typedToShelf(wood, 'new stone', null);
  expect(typedFromShelf(wood, 'new stone', empty)).toEqual(empty);
});

it('takes only fields that the form still has, and stands a spoilt shelf', () => {
  const wood = shelf({
    'stonetone-typed-a': '{"name":"S-07","gone":"x","width":4}',
    'stonetone-typed-b': '{',
  });
  expect(typedFromShelf(wood, 'a', empty)).toEqual({ name: 'S-07', width: '' });
  expect(typedFromShelf(wood, 'b', empty)).toEqual(empty);
  const forbidden = {
    ...wood,
    setItem: () => {
      throw new Error('full');
    },
  };
  expect(() => typedToShelf(forbidden, 'a', empty)).not.toThrow();
});
