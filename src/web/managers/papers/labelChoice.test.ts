import { expect, it } from 'vitest';
import type { Edition } from '../../../records/edition.ts';
import { chosenIn, labelCount, labelCountWords } from './labelChoice.ts';

const print = (impression: string, kind = 'edition') => ({ impression, kind, number: 1 });
const editions = [
  { id: 'tides', prints: [print('a'), print('b'), print('c', 'destroyed')] },
  { id: 'reeds', prints: Array.from({ length: 20 }, (_, index) => print(`r${index}`)) },
] as unknown as readonly Edition[];

it('reads what an address chooses, and nothing of what it does not name', () => {
  expect(chosenIn('?stones=a,b&editions=tides')).toEqual({
    stones: ['a', 'b'],
    batches: [],
    editions: ['tides'],
    prints: [],
  });
  expect(labelCountWords(labelCount(chosenIn(''), editions))).toBe('Choose what labels are wanted for');
});

it('counts the prints that are there, those picked alone where some are, and the pages', () => {
  expect(labelCount(chosenIn('?editions=tides'), editions)).toEqual({ labels: 2, pages: 1 });
  expect(labelCount(chosenIn('?editions=tides&prints=a,c'), editions)).toEqual({ labels: 1, pages: 1 });
  // picks among the prints of one leave those of another as they are
  expect(labelCount(chosenIn('?editions=tides,reeds&prints=a'), editions).labels).toBe(21);
  const many = labelCount(chosenIn('?stones=s&editions=tides,reeds'), editions);
  expect(many).toEqual({ labels: 23, pages: 2 });
  expect(labelCountWords(many)).toBe('23 labels on 2 pages');
});
