import { expect, it } from 'vitest';
import { sheetPdf } from './pdfDocument.ts';
import { printable } from './printable.ts';

it('control characters are left out of a sheet, whatever it is made of', () => {
  const widths = () => 3;
  const bytes = new Uint8Array([0, 1]);
  expect(
    printable({
      table: { body: [['a\u0000b', { text: 'c\u001f\nd\te' }]] },
      layout: { widths },
      bytes,
      bold: true,
    }),
  ).toEqual({ table: { body: [['ab', { text: 'c\nd\te' }]] }, layout: { widths }, bytes, bold: true });
});

it('a sheet with a control character in its narrow letters is written', async () => {
  const content = [{ text: 'Low\u0000 Water', font: 'ArchivoNarrow' }];
  const bytes = await sheetPdf({ title: 'Low Water', createdAt: new Date(0), foot: '', content });
  expect(new TextDecoder().decode(bytes.subarray(0, 5))).toBe('%PDF-');
});
