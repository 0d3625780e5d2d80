import type { TreatmentHold } from '../../records/testStoneAnswer.ts';
import { unitsWords } from '../../studio/trials/answer/answerWords.ts';
import { chartFont, chartInk, nameLines, svgText } from './chartInk.ts';

const rowHeight = 17;
const lineHeight = 10;
const nameWidth = 180;
const countWidth = 72;

/**
 * Shares that held with their 95 % intervals, one row a treatment, its whole name; how many units stand beside. A thick line: a claim stands
 * on it; a thin one: open.
 * @param holds those with a share. @param width user units.
 */
export function holdIntervalsSvg(holds: readonly TreatmentHold[], width: number): string {
  const left = nameWidth + 6;
  const right = width - countWidth;
  const at = (share: number) => round(left + share * (right - left));
  const names = holds.map(({ name }) => nameLines(name, nameWidth, 8.5));
  const heights = names.map((lines) => rowHeight + (lines.length - 1) * lineHeight);
  const tops = heights.map((_, index) => 18 + heights.slice(0, index).reduce((sum, one) => sum + one, 0));
  const height = 18 + heights.reduce((sum, one) => sum + one, 0) + 6;
  const grid = [0, 0.25, 0.5, 0.75, 1].map(
    (share) =>
      `<line x1="${at(share)}" y1="16" x2="${at(share)}" y2="${height - 4}" stroke="${chartInk.rule}" stroke-width="${share === 0.5 ? 1 : 0.4}"/>` +
      `<text x="${at(share)}" y="10" font-size="8" text-anchor="middle" fill="${chartInk.soft}">${100 * share} %</text>`,
  );
  const rows = holds.map((hold, index) => {
    const y = tops[index]! + heights[index]! / 2;
    const first = y + 3 - ((names[index]!.length - 1) * lineHeight) / 2;
    const name = names[index]!.map(
      (line, below) =>
        `<text x="0" y="${first + below * lineHeight}" font-size="8.5" fill="${chartInk.ink}">${svgText(line)}</text>`,
    ).join('');
    const { share, verdict } = hold;
    if (!share)
      return `${name}<text x="${left}" y="${y + 3}" font-size="8.5" fill="${chartInk.soft}">not read</text>`;
    return (
      `${name}<line x1="${at(share.low)}" y1="${y}" x2="${at(share.high)}" y2="${y}" stroke="${chartInk.ink}" stroke-width="${verdict === 'open' ? 1.2 : 4}"/>` +
      `<circle cx="${at(share.value)}" cy="${y}" r="3.2" fill="${verdict === 'open' ? '#ffffff' : chartInk.ink}" stroke="${chartInk.ink}"/>` +
      `<text x="${width}" y="${y + 3}" font-size="8.5" text-anchor="end" fill="${chartInk.ink}">${unitsWords(share)}</text>`
    );
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" ${chartFont}>${grid.join('')}${rows.join('')}</svg>`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
