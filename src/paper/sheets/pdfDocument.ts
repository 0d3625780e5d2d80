import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import pdfMake from 'pdfmake';
import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces.js';

export type SheetContent = Content;

export interface SheetDefinition {
  readonly title: string;
  /** The date kept in the file's own data; the same date and content give the same bytes. */
  readonly createdAt: Date;
  readonly content: readonly SheetContent[];
  /** At the foot of every page, left of the page number. */
  readonly foot: string;
}

const resolve = createRequire(import.meta.url).resolve;
const wide = (cut: string) => resolve(`@expo-google-fonts/archivo/${cut}/Archivo_${cut}.ttf`);
const narrow = (cut: string) => resolve(`@expo-google-fonts/archivo-narrow/${cut}/ArchivoNarrow_${cut}.ttf`);

const fonts = {
  Archivo: {
    normal: wide('400Regular'),
    bold: wide('700Bold'),
    italics: wide('400Regular_Italic'),
    bolditalics: wide('700Bold_Italic'),
  },
  ArchivoNarrow: {
    normal: narrow('400Regular'),
    bold: narrow('700Bold'),
    italics: narrow('400Regular_Italic'),
    bolditalics: narrow('700Bold_Italic'),
  },
};
const fontFolders = new Set(Object.values(fonts).flatMap((family) => Object.values(family).map(dirname)));

pdfMake.addFonts(fonts);
pdfMake.setUrlAccessPolicy(() => false);
pdfMake.setLocalAccessPolicy((path) => fontFolders.has(dirname(path)));

/** A4 in points, and the margin that every sheet keeps for punching and for printers that cannot reach the edge. */
export const page = { widthPt: 595.28, heightPt: 841.89, marginPt: 40, usablePt: 515.28 } as const;

/** Points in a millimetre: 72 points to the inch of 25.4 mm. */
export const ptPerMm = 72 / 25.4;

/**
 * Sets a sheet as a PDF of A4 pages in Archivo. Reads nothing but its own fonts; content may hold
 * pictures only as data addresses. Rejects when a picture cannot be read.
 */
export async function sheetPdf(sheet: SheetDefinition): Promise<Uint8Array> {
  const definition: TDocumentDefinitions = {
    pageSize: 'A4',
    pageMargins: [page.marginPt, 32, page.marginPt, 36],
    info: { title: sheet.title, creator: 'Stonetone', creationDate: sheet.createdAt },
    defaultStyle: { font: 'Archivo', fontSize: 9, lineHeight: 1.15, color: '#1a1714' },
    // The name of a part never stays alone at the foot of a page.
    pageBreakBefore: (node) => node.headlineLevel === 1 && node.startPosition.verticalRatio > 0.87,
    footer: (current, count) => ({
      margin: [page.marginPt, 6, page.marginPt, 0],
      fontSize: 8,
      color: '#4d463d',
      columns: [sheet.foot, { text: `page ${current} of ${count}`, alignment: 'right', width: 70 }],
    }),
    content: [...sheet.content],
  };
  return new Uint8Array(await pdfMake.createPdf(definition).getBuffer());
}
