import type { Change } from '../../records/comparison.ts';
import { changeMeaning, changeWord } from '../../studio/proofs/changeWords.ts';
import { chartFont, chartInk } from './chartInk.ts';
import { hatchedRectangleSvg, hatchOrder } from './hatching.ts';

export interface HatchLegendOptions {
  /** Which changes to explain, in the order shown. Default: all. */
  readonly changes?: readonly Change[];
  /** Width of the picture in px. Default 340. */
  readonly width?: number;
  /** Put before the ids inside the picture; must be unique on the page. Default `legend`. */
  readonly idPrefix?: string;
}

/** The legend of the hatching as one SVG, one line for each change: mark, word and what it means. */
export function hatchLegendSvg(options: HatchLegendOptions = {}): string {
  const changes = options.changes ?? hatchOrder;
  const width = options.width ?? 340;
  const lineHeight = 34;
  const prefix = options.idPrefix ?? 'legend';
  const lines = changes.map((change, index) => {
    const y = index * lineHeight;
    return (
      hatchedRectangleSvg(
        change,
        { x: 0.5, y: y + 2.5, width: 42, height: 26 },
        chartInk.ink,
        `${prefix}-${change}`,
      ) +
      `<text x="52" y="${y + 13}" font-size="13" font-weight="bold" fill="${chartInk.ink}">${changeWord(change)}</text>` +
      `<text x="52" y="${y + 28}" font-size="11" fill="${chartInk.soft}">${changeMeaning(change)}</text>`
    );
  });
  const height = changes.length * lineHeight;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"` +
    ` role="img" aria-label="What the hatching means" ${chartFont}>${lines.join('')}</svg>`
  );
}
