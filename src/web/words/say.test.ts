import { afterEach, expect, test } from 'vitest';
import { say } from './say.ts';
import { setWordsInUse } from './wordsInUse.ts';

const english = { language: 'en', units: 'metric', dates: 'en-GB', sentences: {} } as const;
afterEach(() => setWordsInUse(english));

test('English is its own key', () => {
  expect(say('Nothing here.')).toBe('Nothing here.');
  expect(say('{count, plural, one {# stone} other {# stones}}', { count: 1 })).toBe('1 stone');
  expect(say('{amount} ml{more}', { amount: 1.5, more: null })).toBe('1.5 ml');
});

test('another language by its catalogue, with its own plural and its own comma', () => {
  setWordsInUse({
    ...english,
    language: 'de',
    sentences: {
      '{count, plural, one {# pull} other {# pulls}} of {amount} ml':
        '{count, plural, one {# Abzug} other {# Abzüge}} zu {amount} ml',
    },
  });
  expect(say('{count, plural, one {# pull} other {# pulls}} of {amount} ml', { count: 2, amount: 0.5 })).toBe(
    '2 Abzüge zu 0,5 ml',
  );
  expect(say('Not in the catalogue')).toBe('Not in the catalogue');
});
