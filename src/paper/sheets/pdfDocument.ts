import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import pdfMake from 'pdfmake';
import type { Content, ContentTable, ContentText, TDocumentDefinitions } from 'pdfmake/interfaces.js';
import type { Paper } from '../../records/paper.ts';
import { isPlainEnglish } from '../../words/asWritten.ts';
import { inWords, textInWords } from '../../words/inWords.ts';
import { printable } from './printable.ts';

export type SheetContent = Content;
export type SheetText = ContentText;
export type SheetTable = ContentTable;

export interface SheetDefinition {
  readonly title: string;
  /** The date kept in the file's own data; the same date and content give the same bytes. */
  readonly createdAt: Date;
  readonly content: readonly SheetContent[];
  /** At the foot of every page, left of the page number. */
  readonly foot: string;
  /** How many pages it takes in plain English, where that matters: longer words are set smaller then, as far as they can be read. */
  readonly pages?: number;
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
  if (sheet.pages === undefined || isPlainEnglish()) return (await setAt(sheet, 1)).bytes;
  for (const scale of [1, 0.96, 0.92, 0.88]) {
    const { bytes, pages } = await setAt(sheet, scale);
    if (pages <= sheet.pages) return bytes;
  }
  return (await setAt(sheet, 1)).bytes;
}

async function setAt(
  sheet: SheetDefinition,
  scale: number,
): Promise<{ readonly bytes: Uint8Array; readonly pages: number }> {
  const foot = textInWords(sheet.foot);
  let pages = 1;
  const definition: TDocumentDefinitions = {
    pageSize: 'A4',
    pageMargins: [page.marginPt, 32, page.marginPt, 36],
    info: { title: sheet.title, creator: 'Stonetone', creationDate: sheet.createdAt },
    defaultStyle: { font: 'Archivo', fontSize: 9 * scale, lineHeight: 1.15, color: '#1a1714' },
    // The name of a part never stays alone at the foot of a page.
    pageBreakBefore: (node) => node.headlineLevel === 1 && node.startPosition.verticalRatio > 0.87,
    footer: (current, count) => {
      pages = count;
      return {
        margin: [page.marginPt, 6, page.marginPt, 0],
        fontSize: 8,
        color: '#4d463d',
        columns: [
          printable(foot),
          { text: textInWords(`page ${current} of ${count}`), alignment: 'right', width: 70 },
        ],
      };
    },
    content: sheet.content.map((part) => (scale === 1 ? part : smaller(part, scale))),
  };
  const bytes = await written(definition);
  return { bytes, pages };
}

/** Words set smaller; pictures, rulers and whatever else is drawn stay as they are. */
function smaller<Part>(part: Part, scale: number): Part {
  if (Array.isArray(part)) return part.map((each) => smaller(each, scale)) as Part;
  if (part === null || typeof part !== 'object' || Object.getPrototypeOf(part) !== Object.prototype)
    return part;
  return Object.fromEntries(
    Object.entries(part).map(([name, each]) => [
      name,
      name === 'fontSize' && typeof each === 'number' ? each * scale : smaller(each, scale),
    ]),
  ) as Part;
}

async function written(definition: TDocumentDefinitions): Promise<Uint8Array> {
  return new Uint8Array(await pdfMake.createPdf(printable(inWords(definition))).getBuffer());
}

/** The margin of a sheet that is scaled to one page, points: what common printers can't reach, and a little. */
export const fittedMarginPt = 34;

export interface FittedSheet extends Omit<SheetDefinition, 'content'> {
  readonly paper: Paper;
  /** The sheet's content with every size multiplied by a scale. */
  readonly content: (scale: number, widthPt: number) => readonly SheetContent[];
}

/**
 * Sets a sheet on one page of a paper as large as it fits; what doesn't fit at the least size goes over to more pages.
 */
export async function fittedSheetPdf(sheet: FittedSheet): Promise<Uint8Array> {
  const [widthMm, heightMm] = paperSizesMm[sheet.paper];
  const [width, height] = [widthMm * ptPerMm, heightMm * ptPerMm];
  const least = 0.62;
  const scales = Array.from(
    { length: 10 },
    (_, step) => least + (0.068 * step * widthMm) / paperSizesMm.a4[0],
  );
  let [fits, tooLarge] = [-1, scales.length];
  let best: Uint8Array | null = null;
  const foot = textInWords(sheet.foot);
  while (tooLarge - fits > 1) {
    const middle = Math.floor((fits + tooLarge) / 2);
    const { bytes, pages } = await set(scales[middle]!);
    if (pages > 1 && middle > 0) tooLarge = middle;
    else [fits, best] = [middle, bytes];
  }
  return best!;

  async function set(scale: number): Promise<{ readonly bytes: Uint8Array; readonly pages: number }> {
    let pages = 1;
    const definition: TDocumentDefinitions = {
      pageSize: { width, height },
      pageMargins: [fittedMarginPt, fittedMarginPt, fittedMarginPt, fittedMarginPt],
      info: { title: sheet.title, creator: 'Stonetone', creationDate: sheet.createdAt },
      defaultStyle: { font: 'Archivo', fontSize: 9 * scale, lineHeight: 1.1, color: '#1a1714' },
      footer: (current, count) => {
        pages = count;
        return {
          margin: [fittedMarginPt, 4, fittedMarginPt, 0],
          fontSize: (8 * widthMm) / paperSizesMm.a4[0],
          columns: [
            printable(foot),
            {
              text: count > 1 ? textInWords(`page ${current} of ${count}`) : '',
              alignment: 'right',
              width: 70,
            },
          ],
        };
      },
      content: [...sheet.content(scale, width - 2 * fittedMarginPt)],
    };
    const bytes = await written(definition);
    return { bytes, pages };
  }
}

/** Sheets of paper, width and height upright in mm: ISO 216 for A4 and A3; letter is 8.5 by 11 inches. */
export const paperSizesMm: Readonly<Record<Paper, readonly [number, number]>> = {
  a4: [210, 297],
  a3: [297, 420],
  letter: [215.9, 279.4],
};

export interface PicturePages {
  readonly title: string;
  readonly createdAt: Date;
  /** All pages are of one size. */
  readonly sizeMm: readonly [number, number];
  /** One picture a page, of the page's own size, so that a millimetre of it is a millimetre of paper. */
  readonly svgs: readonly string[];
}

/** Sets pictures as a PDF, each filling its page to the edges, true to size. Archivo is at hand in them. */
export async function picturePagesPdf({ title, createdAt, sizeMm, svgs }: PicturePages): Promise<Uint8Array> {
  const [width, height] = [sizeMm[0] * ptPerMm, sizeMm[1] * ptPerMm];
  const definition: TDocumentDefinitions = {
    pageSize: { width, height },
    pageMargins: 0,
    info: { title, creator: 'Stonetone', creationDate: createdAt },
    defaultStyle: { font: 'Archivo' },
    content: svgs.map((svg, index) => ({
      svg,
      width,
      height,
      absolutePosition: { x: 0, y: 0 },
      ...(index > 0 ? { pageBreak: 'before' as const } : {}),
    })),
  };
  return written(definition);
}
