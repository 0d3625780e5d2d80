import { expect, it } from 'vitest';
import { batchDraftSchema } from '../../contract/batch.ts';
import type { BatchDraft, BatchEntry } from '../../records/batch.ts';
import { ageWords, batchCautions, batchOfTyped, batchTroubles, batchTyped } from './batchForm.ts';

const common = { name: 'November', madeOn: '2026-11-12', note: 'strained twice' };
const drafts: readonly BatchDraft[] = [
  { ...common, kind: 'gum', smell: 'sweet', baume: 14, pH: 4.6 },
  { ...common, kind: 'tannic', gramsPerLitre: 40, pH: null, gum: false },
  { ...common, kind: 'washout', product: 'low odour', opened: '2026-11-20', lot: '7' },
  { ...common, kind: 'base', product: '', opened: null, lot: '', madeOn: null },
];
const entry = (draft: BatchDraft): BatchEntry => ({
  ...draft,
  id: '1',
  putBy: false,
  version: 1,
  createdAt: '',
  changedAt: '',
  sample: false,
  ageDays: 13,
});

it.each(drafts)('gives a batch of $kind back as it was', (draft) => {
  const typed = batchTyped(entry(draft), '2026-11-25');
  expect(Object.values(batchTroubles(draft.kind, typed)).every((each) => each === null)).toBe(true);
  expect(batchOfTyped(draft.kind, typed)).toEqual(draft);
  expect(batchDraftSchema.parse(batchOfTyped(draft.kind, typed))).toEqual(draft);
});

it('starts a new batch today with nothing claimed', () => {
  const typed = batchTyped(null, '2026-11-25');
  expect(batchOfTyped('tannic', { ...typed, name: 'x' })).toMatchObject({
    madeOn: '2026-11-25',
    gramsPerLitre: null,
    pH: null,
    gum: null,
  });
  expect(batchTroubles('gum', { ...typed, pH: '15' })).toMatchObject({
    name: expect.any(String),
    pH: 'A number from 0 to 14.',
  });
});

it('names what a plan would miss, and sour gum', () => {
  expect(batchCautions(entry(drafts[1]!))).toEqual([
    expect.stringContaining('its pH'),
    expect.stringContaining('Without gum'),
  ]);
  expect(batchCautions(entry({ ...drafts[0]!, smell: 'sour' } as BatchDraft))).toHaveLength(1);
  expect(batchCautions(entry(drafts[0]!))).toEqual([]);
});

it('tells an age, a bought batch from its opening', () => {
  const aged = (draft: BatchDraft, ageDays: number | null) => ageWords({ ...entry(draft), ageDays });
  const gum = drafts[0]!;
  expect([null, 0, 1, 13].map((days) => aged(gum, days))).toEqual([
    'age not known',
    'made today',
    '1 day old',
    '13 days old',
  ]);
  const tin = { ...drafts[2]!, madeOn: null };
  expect([0, 54].map((days) => aged(tin, days))).toEqual(['opened today', 'open for 54 days']);
});
