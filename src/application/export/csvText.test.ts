import { parse } from 'csv-parse/sync';
import { expect, it } from 'vitest';
import { csvCell, csvHead, csvLine } from './csvText.ts';
import { column } from './exportColumn.ts';

it('a text that begins like a formula is told as text; a number is not', () => {
  const texts = ['=1+1', '+1', '-1', '@sum', '\tx', '\rx'];
  for (const text of texts) expect(csvCell(text)).toMatch(/^"?'/);
  expect(csvCell(-1.5)).toBe('-1.5');
  expect(csvCell('3 - 2')).toBe('3 - 2');
  expect([csvCell(null), csvCell(undefined), csvCell(false), csvCell(0)]).toEqual(['', '', 'false', '0']);
});

it('whatever a text holds comes back as it was', () => {
  const columns = [column('words', ''), column('list', '', '', 'a.list')];
  const record = { words: ' a "b",\r\nc ', a: { list: [1, 'two'] } };
  const rows = parse<Record<string, string>>(csvHead(columns) + csvLine(columns, record), { columns: true });
  expect(rows).toEqual([{ words: ' a "b",\r\nc ', list: '[1,"two"]' }]);
});
