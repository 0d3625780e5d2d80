import type { BookChapter, StoneBook } from '../../records/stoneBook.ts';
import { isoDayWords } from '../../science/calendar/dateWords.ts';
import { notRecorded, timeWords } from '../../studio/papers/paperWords.ts';
import { type SheetContent, sheetPdf } from './pdfDocument.ts';
import { plainTable } from './plainTable.ts';
import { headline, note, paragraph, partName, rule, stamp } from './sheetParts.ts';

/** The life of a stone or a work as a PDF on A4, in its order. Equal input gives equal bytes. */
export async function stoneBookPdf({ title, facts, chapters, madeAt }: StoneBook): Promise<Uint8Array> {
  return sheetPdf({
    title,
    createdAt: new Date(madeAt),
    foot: `${title}, as kept on ${isoDayWords(madeAt)}. From records alone.`,
    content: [
      stamp('Stone book'),
      headline(title),
      rule(1.5),
      paragraph(facts.map(([label, value]) => `${label}: ${value ?? notRecorded}`).join(' · ')),
      ...chapters.flatMap(chapterContent),
      note(
        'Moments are as they were logged, by the clock of who logged them; a day alone where no hour was kept.',
      ),
    ],
  });
}

function chapterContent({ name, entries, notRecorded: gaps }: BookChapter): SheetContent[] {
  return [
    partName(name),
    entries.length === 0
      ? paragraph('Nothing is kept of it.')
      : plainTable(
          [84, 190, '*'],
          entries.map(({ at, what, more }) => [timeWords(at) ?? 'when is not known', what, more]),
        ),
    ...(gaps.length === 0 ? [] : [note(`Not recorded: ${gaps.join('; ')}.`)]),
  ];
}
