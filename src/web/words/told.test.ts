import { afterEach, expect, test } from 'vitest';
import catalogue from './catalogue/told/de.json' with { type: 'json' };
import { told } from './told.ts';
import { setWordsInUse } from './wordsInUse.ts';

const english = { language: 'en', units: 'metric', dates: 'en-GB', sentences: {} } as const;
afterEach(() => setWordsInUse(english));

test('English is told as it comes', () => {
  expect(told('first etch')).toBe('first etch');
});

test('a sentence is found whole, or by one with places, whose fillings are looked up too', () => {
  setWordsInUse({ ...english, language: 'de', told: catalogue });
  expect(told('first etch')).toBe('erste Ätze');
  expect(told('see whether it is gummed, then: washout')).toBe(
    'nachsehen, ob er gummiert ist, dann: auswaschen',
  );
  expect(told('Pull 4 has no measured photograph yet.')).toBe('Abzug 4 hat noch kein gemessenes Foto.');
  expect(told('Nobody translated this.')).toBe('Nobody translated this.');
});

test('a translation has the places of what it translates', () => {
  const places = (text: string) => (text.match(/\{\w+\}/g) ?? []).toSorted();
  for (const [told, german] of Object.entries(catalogue)) expect(places(german), told).toEqual(places(told));
});
