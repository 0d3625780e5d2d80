import { expect, it } from 'vitest';
import { joinedPieces, paragraphsOf } from './figurePieces.ts';

it('joins text that follows text, and leaves figures where they stand', () => {
  expect(joinedPieces(['We made ', '', { figure: 'pulls' }, ' pulls', ' {so}.'])).toEqual([
    'We made ',
    { figure: 'pulls' },
    ' pulls {so}.',
  ]);
  expect(joinedPieces([])).toEqual([]);
});

it('parts paragraphs at an empty line, also one that two stretches of text make together', () => {
  const pieces = [' Less acid.\n', ' \n\n', { figure: 'zones held' }, ' held.\nWell. \n\n', '\n\n'];
  expect(paragraphsOf(pieces)).toEqual([['Less acid.'], [{ figure: 'zones held' }, ' held.\nWell.']]);
  expect(paragraphsOf([' \n '])).toEqual([]);
});
