import { expect, it } from 'vitest';
import type { ZoneResult } from '../../records/comparison.ts';
import { ladderRows } from './ladderRows.ts';

const parts = { noise: 0, ground: 0, solid: 0, response: 0, registration: 0, floor: 0 };

function zone(id: string, medium: string, drawn: number | null): ZoneResult {
  const tone = drawn === null ? null : { coverage: drawn, low: drawn, high: drawn, parts };
  const darkness = { drawnDarkness: null, printedDarkness: null };
  return {
    id,
    name: id,
    medium,
    drawn: tone,
    printed: null,
    ...darkness,
    change: 'held',
    covered: 1,
    areaMm2: 1,
  };
}

it('goes medium by medium from light to dark, wraps, and puts unknown tones last', () => {
  const zones = [
    zone('c2', 'crayon', 0.5),
    zone('x', 'chalk', 0.1),
    zone('c?', 'crayon', null),
    zone('c1', 'crayon', 0.2),
    zone('w', 'wash', 0.9),
  ];
  const rows = ladderRows(zones, 3).map((row) =>
    row.map(
      (group) => `${group.medium}: ${group.steps.map((step) => `${step.zone.id}@${step.column}`).join(' ')}`,
    ),
  );
  expect(rows).toEqual([
    ['wash: w@0', 'crayon: c1@1 c2@2'],
    ['crayon: c?@0', 'chalk: x@1'],
  ]);
});

it('gives no rows for no zones', () => expect(ladderRows([], 5)).toEqual([]));
