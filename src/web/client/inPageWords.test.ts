import { afterEach, expect, test } from 'vitest';
import { plainChoice } from '../../records/wordChoice.ts';
import { setWordsInUse } from '../../words/wordsInUse.ts';
import { inPageWords } from './inPageWords.ts';

afterEach(() => setWordsInUse({ ...plainChoice, sentences: {} }));

test('a page in plain English asks for sheets as they are kept', () => {
  expect(inPageWords('/api/week.pdf?from=2026-12-07')).toBe('/api/week.pdf?from=2026-12-07');
});

test('another page asks for its own words, units and days', () => {
  setWordsInUse({ language: 'de', units: 'inch', dates: 'sv-SE', sentences: {} });
  expect(inPageWords('/api/protocol.pdf')).toBe('/api/protocol.pdf?language=de&units=inch&days=sv-SE');
  expect(inPageWords('/api/week.pdf?from=2026-12-07')).toBe(
    '/api/week.pdf?from=2026-12-07&language=de&units=inch&days=sv-SE',
  );
});
