import { expect, it } from 'vitest';
import { placesTold } from './placeNames.ts';

const german = {
  'row {row}, {place}': 'Reihe {row}, {place}. Feld',
  'row {row}, {place} to {last}': 'Reihe {row}, {place}. bis {last}. Feld',
  '{list} and {figureMore} more': '{list} und {figureMore} weitere',
};

it('tells places by figures, one by one, and leaves everything else', () => {
  expect(placesTold('row 2, third', german)).toBe('Reihe 2, 3. Feld');
  expect(placesTold('row 1, first to twelfth; row 13, 22nd and 4 more', german)).toBe(
    'Reihe 1, 1. bis 12. Feld; Reihe 13, 22. Feld und 4 weitere',
  );
  expect(placesTold('row 2, third', {})).toBeNull();
  expect(placesTold('row 2, the wet end', german)).toBeNull();
  expect(placesTold('the second row', german)).toBeNull();
});
