/**
 * One line of comma-separated text (RFC 4180), ended. A cell that a table program would take for a formula gets an apostrophe
 * before it.
 */
export function csvLine(cells: readonly string[]): string {
  return `${cells.map(cellOf).join(',')}\r\n`;
}

function cellOf(text: string): string {
  const tame = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(tame) ? `"${tame.replaceAll('"', '""')}"` : tame;
}
