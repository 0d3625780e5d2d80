import { expect, it } from 'vitest';
import { reportHolds } from './reportHolds.ts';

it('counts what a part of a report holds, kind by kind', () => {
  const line = { label: 'Etch', value: null, from: [], figure: null };
  expect(reportHolds([])).toBe('nothing');
  expect(
    reportHolds([
      { kind: 'words', paragraphs: [[{ text: 'We tried.', figure: null }]] },
      { kind: 'lines', name: 'S-01', lines: [line, line] },
      { kind: 'lines', name: 'S-02', lines: [line] },
      {
        kind: 'gaps',
        groups: [{ record: 'work', id: 'w', name: 'Ebb', items: ['how long it was grained'] }],
      },
    ]),
  ).toBe('one paragraph, 3 lines, one thing');
});
