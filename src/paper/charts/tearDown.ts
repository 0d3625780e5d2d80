import type { TearDown, TornPiece } from '../../records/editionPlan.ts';
import { chartFont, chartInk, svgText } from './chartInk.ts';

export interface TearDownOptions {
  /** Width of the picture in px. Default 460; phones 340. */
  readonly width?: number;
  /** Put before the ids inside the picture; must be unique on the page. Default `tear`. */
  readonly idPrefix?: string;
}

const margin = { top: 20, right: 8, bottom: 48, left: 34 };

/**
 * How pieces are torn from a parent sheet, as one SVG: the sheet long side across, its pieces numbered with fine lines
 * along the fibres, what is left over hatched crosswise and named, sizes in mm. A sheet without pieces says so.
 */
export function tearDownSvg(torn: TearDown, options: TearDownOptions = {}): string {
  const width = options.width ?? 460;
  const [sheetWide, sheetHigh] = torn.sheetMm;
  const scale = (width - margin.left - margin.right) / sheetWide;
  const across = (mm: number) => round(margin.left + mm * scale);
  const down = (mm: number) => round(margin.top + mm * scale);
  const foot = down(sheetHigh);
  const id = options.idPrefix ?? 'tear';
  const sheet = `x="${across(0)}" y="${down(0)}" width="${round(sheetWide * scale)}" height="${round(sheetHigh * scale)}"`;
  const text = (x: number, y: number, words: string, more = '') =>
    `<text x="${x}" y="${y}" font-size="12" fill="${chartInk.ink}" ${more}>${svgText(words)}</text>`;
  const waste = Math.round(100 * (1 - torn.used));
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${foot + margin.bottom}"` +
    ` viewBox="0 0 ${width} ${foot + margin.bottom}" role="img" aria-label="${svgText(tearDownWords(torn))}" ${chartFont}>` +
    patterns(id, torn) +
    `<rect ${sheet} fill="url(#${id}-waste)" stroke="${chartInk.ink}" stroke-width="2"/>` +
    torn.pieces.map((piece, index) => pieceSvg(piece, index)).join('') +
    text(across(sheetWide / 2), 13, `${sheetWide} mm`, 'text-anchor="middle"') +
    `<text transform="translate(${margin.left - 8} ${down(sheetHigh / 2)}) rotate(-90)" font-size="12"` +
    ` text-anchor="middle" fill="${chartInk.ink}">${sheetHigh} mm</text>` +
    grainArrow(torn, margin.left, foot + 18) +
    text(
      margin.left,
      foot + 42,
      torn.pieces.length === 0
        ? 'No piece fits on this sheet.'
        : waste === 0
          ? 'Nothing is left over.'
          : `Hatched: left over, ${waste} %.`,
    ) +
    '</svg>'
  );

  function pieceSvg({ xMm, yMm, widthMm, heightMm }: TornPiece, index: number): string {
    const box =
      `x="${across(xMm)}" y="${down(yMm)}" width="${round(widthMm * scale)}"` +
      ` height="${round(heightMm * scale)}"`;
    const middle = [across(xMm + widthMm / 2), down(yMm + heightMm / 2)] as const;
    const size = index === 0 ? `${widthMm} × ${heightMm} mm` : '';
    const fits = widthMm * scale > 8 * size.length;
    const tag = `<text x="${middle[0]}" y="${middle[1] + 5}" font-size="16" font-weight="bold" text-anchor="middle" fill="${chartInk.ink}">${index + 1}</text>`;
    return (
      `<rect ${box} fill="#fff"/>` +
      `<rect ${box} fill="url(#${id}-grain)" stroke="${chartInk.ink}" stroke-width="1.2"/>` +
      `<rect x="${middle[0] - 13}" y="${middle[1] - 11}" width="26" height="21" fill="#fff"/>${tag}` +
      (size && fits && heightMm * scale > 60
        ? `<rect x="${middle[0] - 4 * size.length}" y="${middle[1] + 12}" width="${8 * size.length}" height="16" fill="#fff"/>` +
          text(middle[0], middle[1] + 24, size, 'text-anchor="middle"')
        : '')
    );
  }
}

/** The picture in a sentence, for who can't see it. */
export function tearDownWords({ pieces, sheetMm, used }: TearDown): string {
  const sheet = `a sheet of ${sheetMm[0]} × ${sheetMm[1]} mm`;
  if (pieces.length === 0) return `No piece fits on ${sheet}`;
  return `${pieces.length} ${pieces.length === 1 ? 'piece' : 'pieces'} torn from ${sheet}; ${Math.round(100 * (1 - used))} % is left over`;
}

function patterns(id: string, { sheetGrain }: TearDown): string {
  const grain = sheetGrain === 'unknown' ? '' : sheetGrain === 'long' ? 'M0 4H8' : 'M4 0V8';
  const pattern = (name: string, path: string, opacity: number) =>
    `<pattern id="${id}-${name}" width="8" height="8" patternUnits="userSpaceOnUse">` +
    `<path d="${path}" stroke="${chartInk.ink}" stroke-width="0.8" stroke-opacity="${opacity}" fill="none"/></pattern>`;
  return `<defs>${pattern('waste', 'M0 8L8 0M-2 2L2 -2M6 10L10 6', 0.9)}${pattern('grain', grain, 0.28)}</defs>`;
}

/** A double arrow along the fibres, and its words. */
function grainArrow({ sheetGrain }: TearDown, x: number, y: number): string {
  const words = (at: number, said: string) =>
    `<text x="${at}" y="${y + 4}" font-size="12" fill="${chartInk.ink}">${said}</text>`;
  if (sheetGrain === 'unknown') return words(x, 'Grain direction not known.');
  const arrow =
    sheetGrain === 'long'
      ? `M${x} ${y}h30m-5 -4l5 4l-5 4M${x + 5} ${y - 4}l-5 4l5 4`
      : `M${x + 15} ${y - 9}v18m-4 -5l4 5l4 -5M${x + 11} ${y - 4}l4 -5l4 5`;
  return (
    `<path d="${arrow}" stroke="${chartInk.ink}" stroke-width="1.5" fill="none"/>` +
    words(x + 40, `Fibres along the ${sheetGrain} side; so are the fine lines.`)
  );
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
