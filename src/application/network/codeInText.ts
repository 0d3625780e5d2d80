import { codeMatrix } from '../../paper/sheets/labels/codeMatrix.ts';

/**
 * A QR code for a terminal, two rows of modules to a line, black on white whatever the terminal's own colours.
 * @param coloured false where the text goes into a file: then what is light is drawn, for a dark ground
 */
export function codeInText(text: string, coloured: boolean): string {
  const rows = codeMatrix(text);
  const lines: string[] = [];
  for (let y = 0; y < rows.length; y += 2) {
    const line = rows[y]!.map((dark, x) => halves(dark, rows[y + 1]?.[x] ?? false, coloured)).join('');
    lines.push(coloured ? `\u001b[30;107m${line}\u001b[0m` : line);
  }
  return lines.join('\n');
}

function halves(upperDark: boolean, lowerDark: boolean, coloured: boolean): string {
  const [upper, lower] = coloured ? [upperDark, lowerDark] : [!upperDark, !lowerDark];
  if (upper && lower) return '█';
  if (upper) return '▀';
  return lower ? '▄' : ' ';
}
