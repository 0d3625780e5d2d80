import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { charts, sheets } from './exhibits.ts';
import { galleryIndex, keptNames, pageNames } from './galleryIndex.ts';
import { expectKeptPicture, expectKeptText, keptFolder } from './keptFile.ts';
import { pdfPages, pdfText } from './popplerTools.ts';

describe('gallery of charts', () => {
  for (const { name, svg } of charts) {
    it(`${name} looks as kept`, () => expectKeptText(`${name}.svg`, svg()));
  }
});

describe('gallery of sheets', () => {
  for (const sheet of sheets) {
    it(`${sheet.name} reads and looks as kept, on ${sheet.pages} page(s)`, async () => {
      const pdf = await sheet.pdf();
      const pages = await pdfPages(pdf, 60);
      expect(pages.length).toBe(sheet.pages);
      expectKeptText(`${sheet.name}.txt`, await pdfText(pdf));
      for (const [index, name] of pageNames(sheet.name, sheet.pages).entries()) {
        await expectKeptPicture(name, pages[index]!);
      }
    });
  }

  it('sets the same bytes from the same input', async () => {
    const [first, second] = [await sheets[0]!.pdf(), await sheets[0]!.pdf()];
    expect(Buffer.compare(first, second)).toBe(0);
  });
});

describe('the gallery as a whole', () => {
  it('has an index to leaf through', () => expectKeptText('index.html', galleryIndex()));

  it('keeps nothing that is not shown', () => expect(readdirSync(keptFolder).sort()).toEqual(keptNames()));
});
