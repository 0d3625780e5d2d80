import { expect, test } from 'vitest';
import type { PlannedTreatment } from '../../records/testPlan.ts';
import { judgeLevels } from './judgeLevels.ts';

const judged = (kind: PlannedTreatment['kind'], ...levels: readonly string[]) => {
  const treatment = { name: 'what is varied', kind, levels, reach: 'patch', newLevels: [] };
  return judgeLevels(
    { treatments: [treatment as unknown as PlannedTreatment], ownEtches: [] },
    { ownMedia: [], tables: [] },
  );
};

test('a patch may be left without a drawing, in any of the words for it', () => {
  for (const word of ['none', 'nothing', 'bare', 'blank', ' Blank '])
    expect(judged('medium', word), word).toMatchObject([{ state: 'known', takenFor: 'nothing drawn' }]);
  expect(judged('medium', 'barely')).toMatchObject([{ state: 'unknown', takenFor: null }]);
});

test('deposits and times go by their words, what is free is never unknown', () => {
  expect(judged('deposit', 'Light', 'wash', 'heavy').map(({ state, takenFor }) => [state, takenFor])).toEqual(
    [
      ['known', 'light'],
      ['known', 'wash'],
      ['unknown', null],
    ],
  );
  expect(judged('contact', '2 min', 'long').map(({ takenFor }) => takenFor)).toEqual(['120 s', null]);
  expect(judged('rest', 'until Tuesday')).toMatchObject([{ state: 'free', message: null }]);
});
