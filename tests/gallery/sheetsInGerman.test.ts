import pdfMake from 'pdfmake';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { plainChoice } from '../../src/records/wordChoice.ts';
import { svgInWords } from '../../src/words/inWords.ts';
import { setWordsInUse } from '../../src/words/wordsInUse.ts';
import { wordsOfChoice } from '../../src/words/wordsOfChoice.ts';
import { charts, sheets } from './exhibits.ts';

/** What stays as it stands in any language: names and notes that the gallery's people wrote where a sheet can't tell them from its own words. */
const theirs = new Set([
  'A Mudbank',
  'Creek rag',
  'Creek rag 300',
  'Etches and media on six stones',
  'Lights LOST in the mudbank',
  'First of the Twelve Tides.',
  'Half of the post lies off the sheet.',
  'Low Water',
  'Low Water in the Harbour at Night',
  'Slack Water',
  'Twelve Tides',
  'crayon-2',
  'from the bottles of the year before',
  'grey',
  'lower right',
  'on S-03',
  'pencil',
  'the post holds.',
  'third bottle',
]);
/** Days as the gallery's records have them, not as a sheet writes them. */
const days = /^(2 April 2026|\d{4}-\d\d-\d\d to \d{4}-\d\d-\d\d)$/;

const page = { orientation: 'portrait', width: 0, height: 0 } as const;
const missed = new Set<string>();
let exhibit = '';

beforeAll(async () => {
  // Nothing is set in type: what a sheet is made of is heard, page by page, on its way there.
  vi.spyOn(pdfMake, 'createPdf').mockImplementation(({ footer }) => {
    if (typeof footer === 'function') footer(1, 2, page);
    return { getBuffer: async () => Buffer.alloc(0) } as ReturnType<typeof pdfMake.createPdf>;
  });
  const words = await wordsOfChoice({ ...plainChoice, language: 'de', dates: 'de-DE' });
  setWordsInUse({
    ...words,
    missed: (line, sentence) => {
      if (!theirs.has(line) && !days.test(line)) missed.add(`${exhibit}: ${line} (in: ${sentence})`);
    },
  });
});
afterAll(() => setWordsInUse({ ...plainChoice, sentences: {} }));

test('no line of a chart or sheet stays English in German', async () => {
  for (const { name, svg } of charts) {
    exhibit = name;
    const drawn = svgInWords(svg());
    expect(drawn, name).not.toMatch(/[\uE000-\uF8FF]/);
  }
  for (const { name, pdf } of sheets) {
    exhibit = name;
    await pdf();
  }
  expect([...missed]).toEqual([]);
});
