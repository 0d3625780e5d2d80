import fc from 'fast-check';
import { expect, it } from 'vitest';
import { keptOf, piecesOf, type WordPiece } from './figurePieces.ts';

it('reads words kept before there were doubled braces', () => {
  expect(piecesOf('We made {pulls} pulls; { alone.')).toEqual([
    { kind: 'text', text: 'We made ' },
    { kind: 'figure', name: 'pulls' },
    { kind: 'text', text: ' pulls; { alone.' },
  ]);
  expect(piecesOf('')).toEqual([]);
});

it('keeps typed braces apart from figures', () => {
  const typed: readonly WordPiece[] = [
    { kind: 'text', text: 'In braces {pulls}: ' },
    { kind: 'figure', name: 'pulls' },
  ];
  expect(keptOf(typed)).toBe('In braces {{pulls}}: {pulls}');
  expect(piecesOf(keptOf(typed))).toEqual(typed);
});

it('gives back whatever is typed around figures', () => {
  const text = fc.string({ unit: fc.constantFrom('{', '}', 'a', ' ', '\n'), minLength: 1, maxLength: 8 });
  const figures = fc.constantFrom('pulls', 'zones held');
  const pieces = fc.array(fc.tuple(text, figures), { maxLength: 5 }).map((pairs) =>
    pairs.flatMap(([words, name]): WordPiece[] => [
      { kind: 'text', text: words },
      { kind: 'figure', name },
    ]),
  );
  fc.assert(
    fc.property(pieces, (some) => {
      expect(piecesOf(keptOf(some))).toEqual(some);
    }),
  );
});
