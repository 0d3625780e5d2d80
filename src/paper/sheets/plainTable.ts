import type { SheetContent } from './pdfDocument.ts';

/** A table of words with a thin line between rows, no columns drawn. */
export function plainTable(
  widths: readonly (number | '*')[],
  rows: readonly (readonly string[])[],
  { head, fontSize = 8.5 }: { readonly head?: readonly string[]; readonly fontSize?: number } = {},
): SheetContent {
  const body = rows.map((row) => row.map((text) => ({ text })));
  return {
    table: {
      dontBreakRows: true,
      headerRows: head ? 1 : 0,
      widths: [...widths],
      body: head ? [head.map((text) => ({ text, bold: true })), ...body] : body,
    },
    fontSize,
    margin: [0, 0, 0, 4],
    layout: {
      hLineWidth: (row: number) => (row === 0 ? 0 : 0.5),
      hLineColor: () => '#8b806e',
      vLineWidth: () => 0,
      paddingLeft: () => 0,
      paddingRight: () => 6,
      paddingTop: () => 1.5,
      paddingBottom: () => 1.5,
    },
  };
}
