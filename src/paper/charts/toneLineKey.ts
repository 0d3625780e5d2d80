import { darknessWords } from '../../studio/proofs/seriesWords.ts';
import { textInWords } from '../../words/inWords.ts';
import { chartInk, svgText } from './chartInk.ts';
import { hatchedRectangleSvg } from './hatching.ts';
import type { DrawnSeries } from './toneLineScale.ts';

interface KeyEntry {
  readonly sign: 'band' | 'sigma' | 'thin' | 'ring' | 'cross' | 'plateau';
  readonly words: string;
}

/** What the signs of the tone lines mean, in as many rows as fit beside each other; only signs that are used. */
export function keyRows(series: DrawnSeries, width: number): readonly (readonly KeyEntry[])[] {
  const { pulls, sigma, tolerance, answer } = series;
  const entries: KeyEntry[] = [
    { sign: 'band', words: `tolerance ±${darknessWords(tolerance)} about the latest` },
    ...(sigma === null
      ? []
      : [{ sign: 'sigma', words: `one reading strays by ${darknessWords(sigma)}` } as const]),
    { sign: 'thin', words: 'the truth lies within, 19 times of 20' },
    ...(answer.tones.some(({ plateau }) => plateau)
      ? [{ sign: 'plateau', words: 'where it settles' } as const]
      : []),
    ...(pulls.some(({ how, compared }) => how === 'eye' && compared)
      ? [{ sign: 'ring', words: 'told by eye' } as const]
      : []),
    ...(pulls.some(({ how, compared }) => how !== 'unread' && !compared)
      ? [{ sign: 'cross', words: 'not compared' } as const]
      : []),
  ];
  const rows: KeyEntry[][] = [[]];
  let used = 0;
  for (const entry of entries) {
    const needed = entryWidth(entry);
    if (used + needed > width && rows.at(-1)!.length > 0) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)!.push(entry);
    used += needed;
  }
  return rows;
}

function entryWidth({ words }: KeyEntry): number {
  return 30 + 6.3 * textInWords(words).length + 16;
}

/** The rows as SVG, 19 px a row. `id` must be unique on the page. */
export function keySvg(rows: readonly (readonly KeyEntry[])[], top: number, id: string): string {
  return rows
    .map((row, at) => {
      let x = 0;
      const y = top + at * 19;
      return row
        .map((entry) => {
          const left = x;
          x += entryWidth(entry);
          return (
            signSvg(entry.sign, left, y, `${id}-${entry.sign}`) +
            `<text x="${round(left + 30)}" y="${round(y + 4)}" font-size="12" fill="${chartInk.soft}">${svgText(entry.words)}</text>`
          );
        })
        .join('');
    })
    .join('');
}

function signSvg(sign: KeyEntry['sign'], left: number, y: number, id: string): string {
  const x = round(left + 12);
  switch (sign) {
    case 'band':
      return hatchedRectangleSvg(
        'lighter',
        { x: round(left), y: y - 6, width: 24, height: 12 },
        chartInk.rule,
        id,
      );
    case 'sigma':
      return `<path d="M${x} ${y - 7}V${y + 7}" stroke="${chartInk.ink}" stroke-width="3.2"/>`;
    case 'thin':
      return `<path d="M${x} ${y - 7}V${y + 7}" stroke="${chartInk.ink}" stroke-width="0.9"/>`;
    case 'ring':
      return `<circle cx="${x}" cy="${y}" r="4.5" stroke="${chartInk.ink}" stroke-width="2" fill="#fff"/>`;
    case 'cross':
      return `<path d="M${x - 5} ${y - 5}l10 10m0 -10l-10 10" stroke="${chartInk.soft}" stroke-width="2"/>`;
    case 'plateau':
      return `<path d="M${round(left)} ${y}h24" stroke="${chartInk.tannin}" stroke-width="1.4" stroke-dasharray="7 4"/>`;
    default:
      return sign satisfies never;
  }
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
