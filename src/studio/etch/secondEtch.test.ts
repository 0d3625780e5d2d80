import { expect, test } from 'vitest';
import { secondEtchPlan } from './secondEtch.ts';
import { tableChanges } from './tableChanges.ts';
import { tannicTable } from './tannicTable.ts';

test('lost lights never get a stronger second etch', () => {
  const plan = secondEtchPlan(
    [
      { id: 'sky', name: 'sky', first: 'light', reading: 'lights lost' },
      { id: 'mud', name: 'mudbank', first: 'middle', reading: 'closing' },
      { id: 'post', name: 'post', first: 'dark', reading: 'closing' },
      { id: 'reeds', name: 'reeds', first: 'middle', reading: 'as drawn' },
    ],
    'full',
    tannicTable,
  );
  expect(plan.zones.map((zone) => zone.strength)).toEqual(['ground', 'dark', 'dark', 'middle']);
  expect(plan.cautions[0]).toContain('cannot bring back lost lights');
});

test('a zone whose first etch is not known gets gum only, however it came up', () => {
  const readings = ['as drawn', 'closing', 'scum', 'not read', 'lights lost'] as const;
  const zones = readings.map((reading) => ({ id: reading, name: reading, first: null, reading }));
  const { zones: planned } = secondEtchPlan(zones, 'full', tannicTable);
  expect(planned.map(({ strength }) => strength)).toEqual(readings.map(() => 'ground'));
  expect(planned[1]!.why).toContain('not known here');
});

test('powder comes before the etch in both lines; only the full one rests and is washed out', () => {
  for (const line of ['full', 'quick'] as const) {
    const steps = secondEtchPlan([], line, tannicTable).steps.map((step) => step.what);
    expect(steps.findIndex((what) => what.includes('rosin'))).toBeLessThan(
      steps.findIndex((what) => what.includes('Lay the etch')),
    );
    expect(steps.some((what) => what.includes('Wash out'))).toBe(line === 'full');
  }
});

test('a changed row, a new row and a lost row are said in sentences', () => {
  const [ground, , ...rest] = tannicTable.rows;
  const edited = {
    ...tannicTable,
    version: 2,
    rows: [{ ...ground!, moveWithinSeconds: 60 }, ...rest],
  };
  expect(tableChanges(tannicTable, edited)).toEqual([
    'Ground: the longest gap is now 60 s (before: 45 s).',
    'The rule for scant is gone.',
  ]);
  expect(tableChanges(edited, tannicTable)).toContain(
    'New rule for scant: 1 gum : 1 water, at least 90 s, none wanted more, no most while wet.',
  );
  expect(tableChanges(tannicTable, tannicTable)).toEqual([]);
});
