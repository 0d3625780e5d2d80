import { expect, test } from 'vitest';
import { choiceByBrowser, keepChoice, keptChoice } from './wordChoice.ts';

test('where nobody chose, the browser’s first language with words decides, and units are metric', () => {
  expect(choiceByBrowser(['de-AT', 'en'])).toEqual({ language: 'de', units: 'metric', dates: 'de-DE' });
  expect(choiceByBrowser(['fr', 'en-US'])).toEqual({ language: 'en', units: 'metric', dates: 'en-US' });
  expect(choiceByBrowser([])).toEqual({ language: 'en', units: 'metric', dates: 'en-GB' });
});

test('a choice is kept; what cannot be read is as the browser has it', () => {
  const shelf = new Map<string, string>();
  const storage = {
    getItem: (key: string) => shelf.get(key) ?? null,
    setItem: (key: string, text: string) => void shelf.set(key, text),
  };
  keepChoice(storage, { language: 'de', units: 'inch', dates: 'sv-SE' });
  expect(keptChoice(storage, ['en-GB'])).toEqual({ language: 'de', units: 'inch', dates: 'sv-SE' });
  for (const spoilt of ['{', 'null', '{"language":"xx","units":3}']) {
    expect(keptChoice({ getItem: () => spoilt }, ['de'])).toEqual(choiceByBrowser(['de']));
  }
});
