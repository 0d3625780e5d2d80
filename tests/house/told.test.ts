import { afterAll, beforeAll, expect, test } from 'vitest';
import told from '../../src/words/catalogue/told/de.json' with { type: 'json' };
import { isToldWhole } from '../../src/words/told.ts';
import { setWordsInUse } from '../../src/words/wordsInUse.ts';
import { toldSentences } from './toldSentences.ts';

/** What no person is told on a screen: names of things inside, and books by the names that they have. */
const staysEnglish = new Set([
  'time {stage}',
  'often {stage}',
  'correction {stage}',
  'area {name}',
  'past {fact}',
  'before graining',
  'request failed:',
  'stonetone 0.1.0, engine 4',
  'application/json; charset=utf-8',
  "CRC Handbook of Chemistry and Physics, 51st ed.; Marks' Standard Handbook (US scale, 60/60 °F)",
  'Fromm 1997, Ionization constants of aqueous polyprotic acids',
]);

/** What is in the catalogue once for each way to fill it, such as with “is” and with “are”, or “fills in” and “does not hold”. */
const oncePerWay = /\{small\} \{small2\} smaller on the photograph|\{name\} \{how\}\{where\}: /;

/** What may stand in a place; where a place hangs on a word it may also be empty. */
const fillings = ['Xx', '7', 'stone', 'stones', 'strip', ''];
const byName: Readonly<Record<string, string>> = { unit: 'stone', size: 'stone', unitWords: 'stones' };

beforeAll(() => setWordsInUse({ language: 'de', units: 'metric', dates: 'de-DE', sentences: {}, told }));
afterAll(() => setWordsInUse({ language: 'en', units: 'metric', dates: 'en-GB', sentences: {} }));

function filled(template: string, filling: string): string {
  const open = filling === '' ? template.replace(/(?<=[\p{L}\d.)}])\{\w+\}/gu, '') : template;
  return open.replace(/\{(\w+?)\d*\}/g, (_, name: string) => byName[name] ?? (filling || 'Xx'));
}

test('every sentence that the server or a module of the craft can tell has its German', () => {
  const sentences = toldSentences();
  expect(sentences.length).toBeGreaterThan(1500);
  const english = sentences.filter(
    ({ template }) =>
      !staysEnglish.has(template) &&
      !oncePerWay.test(template) &&
      !fillings.some((one) => isToldWhole(filled(template, one))),
  );
  expect(english.map(({ place, template }) => `${place}: ${template}`)).toEqual([]);
});
