import { afterEach, expect, test } from 'vitest';
import told from '../../words/catalogue/told/de.json' with { type: 'json' };
import { setWordsInUse } from '../../words/wordsInUse.ts';
import { keptName, shownName } from './ownNames.ts';

const own = ['gum alone', 'tannic solution'];

afterEach(() => setWordsInUse({ language: 'en', units: 'metric', dates: 'en-GB', sentences: {} }));

test('what the program names is shown and typed in the page’s language, and kept by its own name', () => {
  setWordsInUse({ language: 'de', units: 'metric', dates: 'de-DE', sentences: {}, told });
  for (const name of own) {
    expect(shownName(name, own)).toBe(told[name as keyof typeof told]);
    expect(keptName(shownName(name, own), own)).toBe(name);
  }
});

test('what somebody typed is shown and kept as it was typed', () => {
  setWordsInUse({ language: 'de', units: 'metric', dates: 'de-DE', sentences: {}, told });
  for (const typed of ['Gummi aus der blauen Flasche', 'gum of the blue bottle', '', 'Gummi allein '])
    expect([keptName(typed, own), shownName(typed, own)]).toEqual([typed, typed]);
});
