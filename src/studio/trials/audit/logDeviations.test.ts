import { expect, it } from 'vitest';
import { answerTestStone } from '../answer/answerTestStone.ts';
import { etchAndMedium, foundPatch } from '../answer/trials.testing.ts';
import { logDeviations } from './logDeviations.ts';

const findings = ['gum', 'tannic'].flatMap((etch, row) =>
  ['crayon', 'wash', 'pen'].map((medium, column) =>
    foundPatch({ row, column, strip: `${row + 1}` }, { etch, medium }, { hold: 'held', printed: 0.5 }),
  ),
);
/** Strips as zones of a work: the first 20 to 50 mm down, the second 60 to 90. */
const places = [20, 60].map((top, k) => ({
  id: `strip-${k + 1}`,
  polygonMm: [
    [0, top],
    [120, top],
    [120, top + 30],
    [0, top + 30],
  ] as const,
}));
const asPlanned = (place: string, laidAt: string) => ({
  place,
  laidAt,
  differenceSeconds: 4,
  plannedSeconds: 120,
  plannedLayFrom: place === 'strip-1' ? 0 : 20,
});
const first = asPlanned('strip-1', '2026-03-02T10:00:00Z');
const second = asPlanned('strip-2', '2026-03-02T10:00:24Z');

it('what went as planned is no deviation', () => {
  expect(logDeviations('T-1', [first, second], places, findings)).toEqual([]);
  expect(logDeviations('T-1', [], places, findings)).toEqual([]);
  const unplanned = { ...second, differenceSeconds: null, plannedSeconds: null, plannedLayFrom: null };
  expect(logDeviations('T-1', [first, unplanned], places, findings)).toEqual([]);
});

it('an etch that lay too long, and a strip laid late, touch the patches in them', () => {
  const long = { ...second, differenceSeconds: 95 };
  expect(logDeviations('T-1', [first, long], places, findings)).toEqual([
    {
      what: 'Etch lay longer than planned',
      stone: 'T-1',
      patches: ['row 2, first', 'row 2, second', 'row 2, third'],
    },
  ]);
  const late = { ...second, laidAt: '2026-03-02T10:11:00Z' };
  const deviations = logDeviations('T-1', [first, late], places, findings);
  expect(deviations.map(({ what }) => what)).toEqual(['Etch was laid a minute or more later than planned']);
  const stone = { stone: 'T-1', sizeMm: [150, 120] as const, factors: etchAndMedium, findings, prints: 1 };
  const { audit } = answerTestStone([stone], deviations);
  expect(audit.find(({ code }) => code === 'one-treatment')).toMatchObject({
    weight: 'no-cause',
    factors: ['etch'],
  });
});
