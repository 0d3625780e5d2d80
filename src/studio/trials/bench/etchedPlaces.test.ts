import { expect, it } from 'vitest';
import type { StonePatch } from '../../../records/testStone.ts';
import { etchedPlaces } from './etchedPlaces.ts';
import { etchRounds } from './etchRounds.ts';

const patch = (id: string, strip: string, column: number, treatment: Record<string, string>): StonePatch => {
  const [x, y] = [30 * column, strip === 'A' ? 20 : 60];
  return {
    id,
    square: id,
    strip,
    row: strip === 'A' ? 1 : 2,
    column,
    polygonMm: [
      [x, y],
      [x + 20, y],
      [x + 20, y + 20],
      [x, y + 20],
    ],
    intention: 'image',
    treatment,
    note: '',
  };
};
const kinds = { etch: 'etch', medium: 'medium' } as const;

it('etches a strip as one where all of it gets the same, else neighbours that do', () => {
  const patches = [
    patch('A1', 'A', 1, { etch: 'gum', medium: 'wash' }),
    patch('A2', 'A', 2, { etch: 'gum', medium: 'crayon' }),
    patch('B1', 'B', 1, { etch: 'gum', medium: 'wash' }),
    patch('B2', 'B', 2, { etch: 'gum', medium: 'crayon' }),
    patch('B3', 'B', 3, { etch: 'tannic', medium: 'crayon' }),
  ];
  const places = etchedPlaces(patches, kinds, [150, 100]);
  expect(places.map(({ id, name, levels }) => [id, name, levels])).toEqual([
    ['strip-A', 'Strip A', { etch: 'gum' }],
    ['B1', 'Row 2, first to second', { etch: 'gum' }],
    ['B3', 'Row 2, third', { etch: 'tannic', medium: 'crayon' }],
  ]);
  expect(places[0]!.polygonMm[0]).toEqual([27, 17]);
  expect(places[1]!.polygonMm[2]).toEqual([81, 81]);
});

it('parts rounds by replicates before it parts them by number', () => {
  const places = ['gum', 'tannic', 'tannic', 'gum'].map((etch, index) => ({
    id: `${index}`,
    name: '',
    polygonMm: [],
    patches: [],
    levels: { etch },
  }));
  const ways = etchRounds(places);
  expect(ways[0]).toEqual([['0', '1', '2', '3']]);
  expect(ways[1]).toEqual([
    ['0', '1'],
    ['2', '3'],
  ]);
  expect(ways.at(-1)).toEqual([['0'], ['1'], ['2'], ['3']]);
});
