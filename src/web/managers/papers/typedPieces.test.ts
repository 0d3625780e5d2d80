import fc from 'fast-check';
import { expect, it } from 'vitest';
import { piecesOfTyped, typedOfPieces } from './typedPieces.ts';

it('gives back whatever is typed around figures', () => {
  const piece = fc.oneof(
    fc.string({ unit: fc.constantFrom('{', '[', '"', 'a', ' ', '\n'), minLength: 1, maxLength: 8 }),
    fc.record({ figure: fc.constantFrom('pulls', 'zones held') }, { noNullPrototype: true }),
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 6 }), (pieces) => {
      expect(piecesOfTyped(typedOfPieces(pieces))).toEqual(pieces);
    }),
  );
});

it('takes for text what is no list of pieces', () => {
  for (const typed of ['Less acid.', '[1]', '{"figure":"pulls"}', '"a"'])
    expect(piecesOfTyped(typed)).toEqual([typed]);
  expect(piecesOfTyped('')).toEqual([]);
});

it('finds the figures in words that a form held from before they stood as themselves', () => {
  expect(piecesOfTyped('We made {pulls} pulls, {{so}}.')).toEqual([
    'We made ',
    { figure: 'pulls' },
    ' pulls, {so}.',
  ]);
});
