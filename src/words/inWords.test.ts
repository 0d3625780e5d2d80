import { afterEach, expect, test } from 'vitest';
import { plainChoice } from '../records/wordChoice.ts';
import { asWritten } from './asWritten.ts';
import { inWords, svgInWords, textInWords } from './inWords.ts';
import { runsInWords } from './runsInWords.ts';
import { setWordsInUse } from './wordsInUse.ts';
import { wordsOfChoice } from './wordsOfChoice.ts';

const plain = { ...plainChoice, sentences: {} };
afterEach(() => setWordsInUse(plain));

const german = async () =>
  setWordsInUse(await wordsOfChoice({ ...plainChoice, language: 'de', dates: 'de-DE' }));

test('plain English is given back as it came, and nothing is marked in it', () => {
  const content = { text: `${asWritten('crayon')}, 300 × 400 mm`, svg: '<text>drawn</text>' };
  expect(inWords(content)).toBe(content);
  expect(content.text).toBe('crayon, 300 × 400 mm');
});

test('texts and drawings are looked up; looks, names and what is true to size stay', async () => {
  await german();
  const set = inWords({
    stack: [
      'First etch, step sheet',
      { text: [{ text: 'Have ready: ', bold: true }, `0.5 ml ${asWritten('gum')}`] },
    ],
    alignment: 'right',
    svg: '<svg aria-label="Etch map"><text x="1">drawn, %</text><text>A &amp; B</text></svg>',
  });
  expect(set).toEqual({
    stack: ['Erste Ätze, Schrittblatt', { text: [{ text: 'Bereithalten: ', bold: true }, '0,5 ml gum'] }],
    alignment: 'right',
    svg: '<svg aria-label="Ätzkarte"><text x="1">gezeichnet, %</text><text>A &amp; B</text></svg>',
  });
  expect(svgInWords(`<text>${asWritten('drawn')}</text>`)).toBe('<text>drawn</text>');
});

test('inches, days and decimal signs are those of the device; a marked length stays', async () => {
  setWordsInUse({ ...plain, units: 'inch', dates: 'en-US' });
  expect(textInWords('300 × 400 mm, film 0.5 mm, 100 cm² on 26 Nov 2026')).toBe(
    '11.81 × 15.75 in, film 0.02 in, 15.5 in² on Nov 26, 2026',
  );
  expect(textInWords(`it must measure ${asWritten('100 mm')}`)).toBe('it must measure 100 mm');
  expect(textInWords('350 mg/m³ and 20 ml')).toBe('350 mg/m³ and 20 ml');
  await german();
  expect(textInWords('Mon 7 Dec to Sun 13 Dec 2026')).toBe('Mo, 7. Dez. bis So, 13. Dez. 2026');
});

test('figures of a paragraph keep their names in the translated sentence; a writer’s words stay', async () => {
  await german();
  const figure = (text: string, name: string) => ({ text, figure: name });
  const word = (text: string) => ({ text, figure: null });
  expect(
    runsInWords([
      figure('2', 'works'),
      word(' works on '),
      figure('3', 'stones'),
      word(' stones. Of 0.5 my own.'),
    ]),
  ).toEqual([
    figure('2', 'works'),
    word(' Arbeiten auf '),
    figure('3', 'stones'),
    word(' Steinen. Of 0.5 my own.'),
  ]);
});
