import { expect, it } from 'vitest';
import type { Report } from '../../../records/report.ts';
import {
  replacementsIn,
  reportOfTyped,
  reportTroubles,
  reportTyped,
  reportWants,
  withReplacement,
} from './reportForm.ts';

const report: Report = {
  id: 'year',
  putBy: false,
  version: 2,
  createdAt: '2026-03-12T00:00:00.000Z',
  changedAt: '2026-03-12T00:00:00.000Z',
  sample: false,
  title: 'A year',
  reader: 'Saltreach Harbour Trust',
  from: '2026-01-01',
  to: null,
  works: ['w1', 'w2'],
  comparisons: ['c1'],
  editions: [],
  words: {
    aims: ['Less {acid}.'],
    tried: [],
    found: [{ figure: 'pulls' }, ' pulls'],
    materials: [],
    edition: [],
    next: [],
  },
  replacements: [
    {
      before: 'Nitric acid',
      beforeMaterialId: 'm1',
      beforeMl: 40,
      beforeFrom: 'the bottles',
      now: 'tannic solution',
      nowMaterialId: null,
    },
  ],
};

it('gives back what was kept where nothing was typed', () => {
  const { id, putBy, version, createdAt, changedAt, sample, ...draft } = report;
  expect(reportOfTyped(reportTyped(report))).toEqual(draft);
  expect(reportTroubles(reportTyped(report))).toEqual({ title: null, to: null, replacements: null });
  expect(reportTroubles(reportTyped(null)).title).toBe('A title is needed.');
});

it('takes, changes and leaves out replacements, and names what is wrong with them', () => {
  const typed = reportTyped(report);
  const more = { ...typed, ...withReplacement(typed, 1, {}) };
  expect(replacementsIn(more)).toHaveLength(2);
  expect(reportTroubles(more).replacements).toMatch(/what takes its place/);
  const wrong = { ...typed, ...withReplacement(typed, 0, { beforeMl: 'much' }) };
  expect(reportTroubles(wrong).replacements).toMatch(/A number/);
  const unknown = { ...typed, ...withReplacement(typed, 0, { beforeMl: '' }) };
  expect(reportOfTyped(unknown).replacements[0]!.beforeMl).toBeNull();
  expect(replacementsIn({ ...typed, ...withReplacement(typed, 0, null) })).toEqual([]);
  expect(reportTroubles({ ...typed, to: '2025-12-31' }).to).toBe('It ends before it begins.');
});

it('names what is not chosen or written yet', () => {
  expect(reportWants(report)).toEqual(['tried', 'next']);
  expect(reportWants({ works: [], words: { ...report.words, aims: ['  '] } })).toEqual([
    'works',
    'aims',
    'tried',
    'next',
  ]);
});
