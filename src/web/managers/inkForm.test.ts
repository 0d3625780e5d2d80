import { expect, it } from 'vitest';
import { inkDraftSchema } from '../../contract/ink.ts';
import type { InkDraft, InkEntry } from '../../records/ink.ts';
import type { InkAnswer } from '../../records/inkAnswer.ts';
import {
  inkFacts,
  inkOfTyped,
  inkTroubles,
  inkTyped,
  typedOfAnswer,
  typedOfInk,
  weighingWords,
} from './inkForm.ts';

const draft: InkDraft = {
  name: 'Mudbank black',
  workId: 'low-water',
  madeOn: '2026-03-04',
  softInk: 'litho black, soft',
  stiffInk: 'crayon black',
  softParts: 70,
  stiffParts: 30,
  inkGrams: 50,
  modifier: 'magnesium carbonate',
  modifierPercent: 5,
  strings: [{ at: '2026-03-04T10:00:00.000Z', cm: 1.5, note: '' }],
  verdict: 'good',
  verdictWords: 'darks stayed open',
  note: '',
};
const entry = { ...draft, id: '1', softPercent: 70 } as InkEntry;

it('gives a mix back as it was, and starts one with nothing claimed', () => {
  const typed = inkTyped(entry, '2026-11-25');
  expect(Object.values(inkTroubles(typed)).every((each) => each === null)).toBe(true);
  const { strings, ...rest } = draft;
  expect(inkOfTyped(typed)).toEqual(rest);
  expect(inkDraftSchema.parse({ ...inkOfTyped(typed), strings })).toEqual(draft);
  const fresh = inkTyped(null, '2026-11-25', 'neap');
  expect(inkOfTyped({ ...fresh, name: 'x' })).toMatchObject({
    workId: 'neap',
    madeOn: '2026-11-25',
    softParts: null,
    inkGrams: null,
    verdict: null,
  });
  expect(inkTroubles({ ...fresh, softParts: '0', stiffParts: '0' })).toMatchObject({
    name: expect.any(String),
    softParts: 'One of the parts is above 0.',
  });
});

it('says what to weigh, with the modifier both ways round', () => {
  const typed = inkTyped(entry, '');
  expect(weighingWords(typed)).toBe(
    'Weigh 35 g soft, 15 g stiff, then 2.5 g of the modifier: 5 % on the ink, which is 4.8 % of the whole.',
  );
  expect(weighingWords({ ...typed, modifierPercent: '', name: '' })).toBe('Weigh 35 g soft, 15 g stiff.');
  expect(weighingWords({ ...typed, inkGrams: '' })).toBeNull();
  expect(weighingWords({ ...typed, stiffParts: 'some' })).toBeNull();
});

it('tells a mix in few words, and what nobody knows of it', () => {
  expect(inkFacts(entry)).toEqual(['70:30 soft to stiff', '5 % magnesium carbonate', 'string 1.5 cm']);
  const bare = { ...entry, softPercent: null, modifierPercent: null, modifier: '', strings: [] };
  expect(inkFacts(bare)).toEqual(['parts not stated', 'string not tried']);
});

it('takes over a recommendation, and an earlier mix without its grams', () => {
  const mix = {
    low: { softGrams: 60, stiffGrams: 1, modifierGrams: 0 },
    high: { softGrams: 120, stiffGrams: 2, modifierGrams: 0 },
  };
  const answer = { parts: { soft: 94, stiff: 6 }, mix } as InkAnswer;
  expect(typedOfAnswer(answer)).toEqual({ softParts: '94', stiffParts: '6', inkGrams: '92' });
  expect(typedOfAnswer({ ...answer, parts: null })).toEqual({});
  expect(typedOfInk(entry)).toEqual({
    softInk: 'litho black, soft',
    stiffInk: 'crayon black',
    softParts: '70',
    stiffParts: '30',
    modifier: 'magnesium carbonate',
    modifierPercent: '5',
  });
});
