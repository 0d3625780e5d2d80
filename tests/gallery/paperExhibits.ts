import { labelSheetPdf } from '../../src/paper/sheets/labelSheet.ts';
import { reportPdf } from '../../src/paper/sheets/reportSheet.ts';
import { stoneBookPdf } from '../../src/paper/sheets/stoneBookSheet.ts';
import { testCoursePdf } from '../../src/paper/sheets/testCourseSheet.ts';
import { testStonePdf } from '../../src/paper/sheets/testStoneSheet.ts';
import { workProtocolPdf } from '../../src/paper/sheets/workProtocolSheet.ts';
import type { SheetExhibit } from './exhibit.ts';
import { labels, stoneBook } from './records/labels.ts';
import { reports } from './records/reports.ts';
import { testCourses } from './records/testCourse.ts';
import { testStoneSheets } from './records/testStones.ts';
import { workProtocols } from './records/workProtocols.ts';

/** Papers that leave the studio: protocols of works, reports, books; and the labels that go with what they tell of. */
export const paperSheets: readonly SheetExhibit[] = [
  { name: 'protocol-low-water', pages: 2, pdf: () => workProtocolPdf(workProtocols.lowWater) },
  { name: 'protocol-slack-water', pages: 1, pdf: () => workProtocolPdf(workProtocols.slackWater) },
  { name: 'report-year', pages: 2, pdf: () => reportPdf(reports.year, reports.pictures) },
  { name: 'book-stone', pages: 1, pdf: () => stoneBookPdf(stoneBook) },
  { name: 'test-stone-by-hand', pages: 2, pdf: () => testStonePdf(testStoneSheets.byHand) },
  { name: 'test-course-etch', pages: 2, pdf: () => testCoursePdf(testCourses.etch) },
  { name: 'test-course-draw', pages: 1, pdf: () => testCoursePdf(testCourses.draw) },
  { name: 'test-stones-six', pages: 2, pdf: () => testStonePdf(testStoneSheets.six) },
  labelled('labels', labels),
  labelled('labels-none', []),
];

function labelled(name: string, shown: typeof labels): SheetExhibit {
  const createdAt = new Date('2026-04-02T10:00:00Z');
  const origin = 'http://127.0.0.1:8080';
  return {
    name,
    pages: 1,
    pdf: () => labelSheetPdf({ labels: shown, origin, paper: 'a4', createdAt }),
  };
}
