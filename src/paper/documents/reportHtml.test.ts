import { expect, it } from 'vitest';
import type { SetReport } from '../../records/setReport.ts';
import { reportHtml } from './reportHtml.ts';

const markup = '<img src=x onerror="alert(1)">';

/** A report in which everything that a person can write is markup. */
const report: SetReport = {
  schema: 'stonetone/report/1',
  engine: '1',
  setAt: '2026-03-04T09:00:00Z',
  reportId: 'report',
  reportVersion: 1,
  title: markup,
  reader: markup,
  period: markup,
  parts: [
    {
      name: markup,
      blocks: [
        { kind: 'words', paragraphs: [[{ text: markup, figure: null }]] },
        { kind: 'lines', name: markup, lines: [{ label: markup, value: markup, from: [], figure: null }] },
        { kind: 'comparison', id: 'comparison', title: markup, finding: null },
        { kind: 'gaps', groups: [{ record: 'work', id: 'work', name: markup, items: [markup] }] },
      ],
    },
  ],
  figures: [],
  gaps: [],
  unknownFigures: [markup],
};

it('what people wrote stands as text, wherever it stands', () => {
  const html = reportHtml(report, {});
  expect(html).not.toContain('<img');
  expect(html).not.toContain('onerror="');
  // title twice, reader, period, part, words, name, label and value of a line, comparison, two of gaps, unknown figure
  expect(html.split('&lt;img src=x onerror=&quot;alert(1)&quot;&gt;').length - 1).toBeGreaterThanOrEqual(13);
});
